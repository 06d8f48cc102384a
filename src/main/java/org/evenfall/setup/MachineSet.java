package org.evenfall.setup;

/**
 * All that a measurement depends on, in a test or now.
 *
 * @param conditions width, driving, height, speed, rate and product
 * @param settings levers and PTO speed
 * @param openings opening or factor of each side
 */
record MachineSet(TestConditions conditions, ReadSettings settings, Openings openings) {}
