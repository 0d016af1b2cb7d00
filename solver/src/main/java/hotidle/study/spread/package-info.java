/** What is not known of a build's sizes, and what that makes of its margins. */
package hotidle.study.spread;
