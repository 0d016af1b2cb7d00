package hotidle.heat;

import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;

/**
 * A state of a unit at the temperatures that its heat gives.
 *
 * @param at    temperatures of what stores heat
 * @param duty  the duty point with the temperatures of all regions
 * @param state the state at them
 * @param flows its heat
 */
public record WarmState(Temperatures at, DutyPoint duty, Solution state, HeatFlows flows) {}
