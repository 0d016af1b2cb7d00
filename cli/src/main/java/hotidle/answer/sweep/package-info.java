/** A circuit over engine speed: columns, lines, JSON record, pictures. */
package hotidle.answer.sweep;
