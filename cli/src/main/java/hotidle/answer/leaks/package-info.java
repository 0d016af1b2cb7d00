/** Where the oil goes, and what each repair wins back. */
package hotidle.answer.leaks;
