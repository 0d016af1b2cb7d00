/**
 * What commands answer, one package a command; nothing is solved or judged here. Labels of columns stand with their rows, all else
 * that is said is a phrase. {@code check}, {@code list} and {@code sheet} have a screen alone and are no {@link Answer}: they show
 * what a file says or asks for, not what was solved, and take no format.
 */
package hotidle.answer;
