package org.evenfall.trays;

/**
 * Probabilities that the true CV is at most the limit of a verdict, 0 to 1, rising.
 *
 * @param good at most the limit of {@link EvennessVerdict#GOOD}
 * @param acceptable at most the limit of {@link EvennessVerdict#ACCEPTABLE}
 * @param adjust at most the limit of {@link EvennessVerdict#ADJUST}
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
                interval.probabilityAtMost(EvennessVerdict.GOOD.limitPercent(), cvPercent),
                interval.probabilityAtMost(EvennessVerdict.ACCEPTABLE.limitPercent(), cvPercent),
                interval.probabilityAtMost(EvennessVerdict.ADJUST.limitPercent(), cvPercent));
    }

    /** Probability that the true CV is at most the limit of this verdict; 1 where it has no limit. */
    public double atMost(EvennessVerdict verdict) {
        return switch (verdict) {
            case GOOD -> good;
            case ACCEPTABLE -> acceptable;
            case ADJUST -> adjust;
            case DO_NOT_SPREAD -> 1;
        };
    }
}
