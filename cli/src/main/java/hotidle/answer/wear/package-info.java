/** What {@code wear} answers. */
package hotidle.answer.wear;
