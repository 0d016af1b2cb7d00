/** Nodes, the parts placed between them, and the conditions under which a network is solved. */
package hotidle.network;
