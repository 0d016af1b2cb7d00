/** What {@code map} answers. */
package hotidle.answer.map;
