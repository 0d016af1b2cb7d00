/** Studies made of many solves: sweeps over speed, figures of a state, builds side by side. */
package hotidle.study;
