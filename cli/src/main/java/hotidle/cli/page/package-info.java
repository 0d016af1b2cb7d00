/** Pages as HTML. */
package hotidle.cli.page;
