/** What {@code leaks --by job} answers. */
package hotidle.answer.jobs;
