/** Every sentence that the program can say, one file a thing said. A phrase takes values, never a state. */
package hotidle.answer.phrase;
