/** study. */
package hotidle.study;
