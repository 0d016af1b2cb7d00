/** The command line: reads what is asked, prints what is found. The only place that prints and exits. */
package hotidle.cli;
