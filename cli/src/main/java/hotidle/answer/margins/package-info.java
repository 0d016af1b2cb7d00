/** What {@code margins} answers: every limit of some builds at every duty point. */
package hotidle.answer.margins;
