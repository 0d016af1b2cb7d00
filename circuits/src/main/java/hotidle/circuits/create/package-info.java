/** A unit of one's own, scaled from a ready circuit by a dozen answers. */
package hotidle.circuits.create;
