package org.evenfall.flight;

/**
 * Where and how a granule comes down.
 *
 * @param landingM horizontal distance, m
 * @param timeS time of flight, s
 * @param impactSpeedMPerS speed over the ground at landing, m/s
 * @param impactAngleDeg angle below the horizontal at landing, °
 */
public record Landing(double landingM, double timeS, double impactSpeedMPerS, double impactAngleDeg) {}
