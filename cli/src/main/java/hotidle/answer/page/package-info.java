/** Pieces of which pages are put together: what is said, tables, pictures, as plain values. */
package hotidle.answer.page;
