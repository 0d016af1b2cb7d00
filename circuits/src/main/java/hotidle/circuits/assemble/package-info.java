/** From what was read to what the solver takes: names, changes of builds, structure, sections. */
package hotidle.circuits.assemble;
