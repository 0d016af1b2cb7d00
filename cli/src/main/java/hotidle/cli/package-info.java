/** Tmp. */
package hotidle.cli;
