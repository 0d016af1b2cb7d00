/** What a circuit file holds and what it leaves to the program. */
package hotidle.answer.check;
