/** What must be true of a circuit file beyond each key alone: one rule a file, all listed in {@link hotidle.circuits.check.Rules}. */
package hotidle.circuits.check;
