package org.evenfall.trays;

/**
 * Probabilities that the true CV is at most each limit, 0 to 1, rising.
 *
 * @param good at most {@link CvLimits#GOOD_PERCENT}
 * @param acceptable at most {@link CvLimits#FIELD_PERCENT}
 * @param adjust at most {@link CvLimits#STRIPES_PERCENT}
 */
public record LimitProbabilities(double good, double acceptable, double adjust) {

    /** @throws IllegalArgumentException when they do not rise from 0 to 1 */
    public LimitProbabilities {
        if (!(0 <= good && good <= acceptable && acceptable <= adjust && adjust <= 1)) {
            throw new IllegalArgumentException(
                    "probabilities must rise within 0 to 1: " + good + ", " + acceptable + ", " + adjust);
        }
    }

    static LimitProbabilities of(CvInterval interval, double cvPercent) {
        return new LimitProbabilities(
                interval.probabilityAtMost(CvLimits.GOOD_PERCENT, cvPercent),
                interval.probabilityAtMost(CvLimits.FIELD_PERCENT, cvPercent),
                interval.probabilityAtMost(CvLimits.STRIPES_PERCENT, cvPercent));
    }
}
