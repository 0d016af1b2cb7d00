/** film. */
package hotidle.film;
