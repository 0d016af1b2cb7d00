/** The live page: a server on the loopback address, what it may be asked, and what it answers. */
package hotidle.cli.live;
