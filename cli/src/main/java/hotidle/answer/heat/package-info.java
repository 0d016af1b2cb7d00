/** The answer of {@code heat}. */
package hotidle.answer.heat;
