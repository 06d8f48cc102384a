package org.evenfall.flight;

/**
 * Where and how a granule comes down.
 *
 * @param landingM horizontal distance along the throw, m; negative when the wind carries it back
 * @param acrossM carried to the right by the wind, m
 * @param timeS time of flight, s
 * @param impactSpeedMPerS speed over the ground at landing, m/s
 * @param impactAngleDeg angle below the horizontal at landing, degrees; above 90 when it comes down against the throw
 */
public record Landing(double landingM, double acrossM, double timeS, double impactSpeedMPerS, double impactAngleDeg) {}
