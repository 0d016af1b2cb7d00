/** Builds side by side: rows, sentences, JSON record. */
package hotidle.answer.compare;
