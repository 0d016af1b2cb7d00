package hotidle.answer.report;

import hotidle.study.SpeedSweep;

/**
 * A unit of a handout.
 *
 * @param sweep it over engine speed
 * @param fault laid over its build, as it was written; empty where none is
 */
public record LessonUnit(SpeedSweep sweep, String fault) {}
