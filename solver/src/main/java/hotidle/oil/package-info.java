/** The oil: density, viscosity and entrained air. */
package hotidle.oil;
