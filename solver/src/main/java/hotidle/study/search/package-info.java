/** Searches along one number that are told each value and say where to look next; they know nothing of oil. */
package hotidle.study.search;
