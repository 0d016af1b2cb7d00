/** The sheet that is filled in at the bench. */
package hotidle.answer.sheet;
