/** The oil film of a journal bearing: Reynolds' equation, the table of its solutions, and the film that the bushing asks. */
package hotidle.film;
