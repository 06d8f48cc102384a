package org.evenfall.trays;

import org.evenfall.quantity.Interval;
import org.jspecify.annotations.Nullable;

/**
 * The coefficient of variation of one test and how sure it is.
 *
 * @param percent CV of the catches, n − 1, %, at least 0
 * @param noisePercent counting and reading noise of one tray, %, at least 0
 * @param intervalPercent 90 % interval for the true CV, %
 * @param probabilities that the true CV is at most each limit
 */
public record CvEstimate(
        double percent, double noisePercent, Interval intervalPercent, LimitProbabilities probabilities) {

    /** @throws IllegalArgumentException for a negative CV or noise */
    public CvEstimate {
        if (!(percent >= 0) || !(noisePercent >= 0)) {
            throw new IllegalArgumentException(
                    "percent and noisePercent must be at least 0: " + percent + ", " + noisePercent);
        }
    }

    /**
     * The estimate from a CV.
     *
     * @param trays number of catches, at least 3
     */
    static CvEstimate of(double cvPercent, double noisePercent, int trays) {
        CvInterval interval = new CvInterval(trays);
        return new CvEstimate(
                cvPercent,
                noisePercent,
                interval.intervalPercent(cvPercent),
                LimitProbabilities.of(interval, cvPercent));
    }

    /** CV of the machine alone, √(CV² − noise²), %; null where the noise is as large, so that it cannot be determined. */
    public @Nullable Double machinePercent() {
        double square = percent * percent - noisePercent * noisePercent;
        return square > 0 ? Double.valueOf(Math.sqrt(square)) : null;
    }

    /** Lower end of the 90 % interval, %. */
    public double lowPercent() {
        return intervalPercent.low();
    }

    /** Upper end of the 90 % interval, %. */
    public double highPercent() {
        return intervalPercent.high();
    }
}
