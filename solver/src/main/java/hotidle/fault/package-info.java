/** What goes wrong in a unit, as values: a kind, a part and a size make a changed unit of a sound one. */
package hotidle.fault;
