/** Laws of flow, one effect a file: each gives the viscous and the kinetic share of a pressure drop. */
package hotidle.law;
