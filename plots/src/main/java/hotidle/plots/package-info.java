/** Tmp. */
package hotidle.plots;
