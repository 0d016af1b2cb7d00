/** How values are shown: quantities by unit system, digits, tables, wrapped lines, JSON. */
package hotidle.answer.format;
