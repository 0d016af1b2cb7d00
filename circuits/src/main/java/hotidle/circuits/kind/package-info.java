/** The words of the circuit language: one declaration for each kind of part, with how the solver's part is made of it. */
package hotidle.circuits.kind;
