/** One section of a circuit file a file: its keys and how it is read. */
package hotidle.circuits.section;
