/** What one part does on its own. */
package hotidle.answer.part;
