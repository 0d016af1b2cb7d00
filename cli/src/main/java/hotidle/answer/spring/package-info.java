/** What {@code spring} answers: how a regulator comes to another set pressure. */
package hotidle.answer.spring;
