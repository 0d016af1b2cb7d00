/** The parts of the circuit, one kind a file: each answers with flows, balances and their exact slopes. */
package hotidle.part;
