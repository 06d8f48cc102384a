package org.evenfall.flight;

/**
 * Where and how a granule comes down.
 *
 * @param landingM horizontal distance, m
 * @param acrossM carried to the right by the wind, m
 * @param timeS time of flight, s
 * @param impactSpeedMPerS speed over the ground at landing, m/s
 * @param impactAngleDeg angle below the horizontal at landing, °
 */
public record Landing(double landingM, double acrossM, double timeS, double impactSpeedMPerS, double impactAngleDeg) {}
