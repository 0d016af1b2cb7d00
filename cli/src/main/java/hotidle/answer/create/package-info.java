/** What new answers: the unit that was made, and what it would be as sound. */
package hotidle.answer.create;
