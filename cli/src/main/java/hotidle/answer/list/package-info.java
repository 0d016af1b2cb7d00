/** What can be asked for: circuits, kinds of parts, units. */
package hotidle.answer.list;
