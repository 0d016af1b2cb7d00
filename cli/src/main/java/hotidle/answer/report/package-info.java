/** What {@code report} answers: one page put together from what the other commands answer. */
package hotidle.answer.report;
