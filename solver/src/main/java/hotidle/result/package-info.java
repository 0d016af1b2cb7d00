/** What a solve gives: names and SI numbers, or the reason why there are none. */
package hotidle.result;
