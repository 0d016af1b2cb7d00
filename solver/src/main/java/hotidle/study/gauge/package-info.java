/** Gauge readings of a unit: whether they agree with its build, and which fault explains them. */
package hotidle.study.gauge;
