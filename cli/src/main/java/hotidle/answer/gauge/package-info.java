/** What {@code gauge} answers: whether gauge readings agree with a build, and which fault explains them. */
package hotidle.answer.gauge;
