/** What {@code air} answers: the oil leak of a land by its vacuum or air test. */
package hotidle.answer.air;
