/** Heat: where it comes from and goes, and the temperatures that follow from it. */
package hotidle.heat;
