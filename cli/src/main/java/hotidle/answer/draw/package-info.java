/** What {@code draw} answers: the circuit as a drawing, with the pressures of a duty point where one is asked for. */
package hotidle.answer.draw;
