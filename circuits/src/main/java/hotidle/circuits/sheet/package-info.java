/** The measurement sheet: every size that wears as a row to fill in, and a build made of what was filled in. */
package hotidle.circuits.sheet;
