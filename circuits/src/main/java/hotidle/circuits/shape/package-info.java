/** What may stand in a circuit file: keys with their meaning, units, limits and defaults, and the reader that holds to them. */
package hotidle.circuits.shape;
