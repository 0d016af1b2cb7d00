/** A whole unit: its network, ranges, pressure command and duty points. */
package hotidle.transmission;
