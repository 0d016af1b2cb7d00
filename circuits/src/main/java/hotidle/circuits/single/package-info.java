/** One part on its own: the keys that are asked for, read from the words of a command, and what a circuit would say made up. */
package hotidle.circuits.single;
