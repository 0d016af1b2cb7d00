/** What {@code sensitivity} answers: how much each size moves each limit. */
package hotidle.answer.sensitivity;
