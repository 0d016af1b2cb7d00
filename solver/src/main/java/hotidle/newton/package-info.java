/** Newton's method on a network: assembly, linear algebra, globalisation and the fallback. */
package hotidle.newton;
