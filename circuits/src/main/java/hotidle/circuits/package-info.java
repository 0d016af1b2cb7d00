/** Circuit files: read, checked in one pass, and turned into units that the solver takes; and the library of ready ones. */
package hotidle.circuits;
