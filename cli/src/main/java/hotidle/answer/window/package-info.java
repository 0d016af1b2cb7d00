/** What {@code window} answers: which set pressures each limit allows. */
package hotidle.answer.window;
