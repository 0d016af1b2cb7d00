/** What {@code spread} answers: how often limits hold when what nobody measured is drawn, and what drives that. */
package hotidle.answer.spread;
