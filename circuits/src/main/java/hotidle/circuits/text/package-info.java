/** Text with its place in the file: the tree of a YAML file, quantities with units, and problems. Knows nothing of circuits. */
package hotidle.circuits.text;
