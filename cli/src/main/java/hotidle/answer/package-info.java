/** What each command answers, as values: rows, sentences, JSON record, request for a picture. Neither solves nor prints. */
package hotidle.answer;
