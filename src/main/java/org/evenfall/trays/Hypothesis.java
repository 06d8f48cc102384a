package org.evenfall.trays;

/**
 * One combination of unknowns that may explain the tests.
 *
 * @param curve curve that the machine follows
 * @param placeDeg where on it the settings now are
 * @param response how the levers answer
 * @param quarterOffset constant part of the quarter points that the curve does not know, % of the mean
 * @param logWeight logarithm of how well it explains the tests, up to a constant common to all
 */
record Hypothesis(ShapeCurve curve, double placeDeg, LeverResponse response, double quarterOffset, double logWeight) {

    /** Assumption: standard deviation of the quarter offset, % of the mean. */
    private static final double QUARTER_OFFSET_PERCENT = 8;

    /**
     * Assumption: a place off the ordinary run of a curve, where the throw reaches past the neighbour, is so much less likely
     * than one on it; natural logarithm.
     */
    private static final double LN_PAST_NEIGHBOUR = Math.log(0.02);

    /**
     * A combination weighted by the tests. The quarter offset is averaged out in closed form: with precision p₀ of its prior
     * and pᵢ of each test, its mean is Σ pᵢ rᵢ / (p₀ + Σ pᵢ), rᵢ the residuals without it.
     */
    static Hypothesis weighted(ShapeCurve curve, double placeDeg, LeverResponse response, Iterable<Observation> tests) {
        double log = curve.isOrdinary(placeDeg) ? 0 : LN_PAST_NEIGHBOUR;
        double precision = 1 / (QUARTER_OFFSET_PERCENT * QUARTER_OFFSET_PERCENT);
        double weightedResiduals = 0;
        for (Observation test : tests) {
            double place = placeDeg;
            double quarter = 0;
            for (int j = 0; j < test.steps().length; j++) {
                place += response.slopeDeg()[j] * test.steps()[j];
                quarter += response.quarterSlope()[j] * test.steps()[j];
            }
            double centreResidual = test.centrePercent() - curve.centrePercent(place);
            log -= 0.5 * centreResidual * centreResidual / test.centreVariance();
            double quarterResidual = test.quarterPercent() - curve.quarterPercent(place) - quarter;
            precision += 1 / test.quarterVariance();
            weightedResiduals += quarterResidual / test.quarterVariance();
            log -= 0.5 * quarterResidual * quarterResidual / test.quarterVariance();
        }
        return new Hypothesis(
                curve,
                placeDeg,
                response,
                weightedResiduals / precision,
                log + 0.5 * weightedResiduals * weightedResiduals / precision);
    }

    /** CV² after a move of each lever by whole steps up its scale, %². */
    double cvSquareAfter(int[] move, EvenShapeVariance variance) {
        return variance.cvSquare(curve.centrePercent(placeAfter(move)), quarterAfter(move));
    }

    /** Variance of that from the error of the curves, %⁴. */
    double squareVarianceAfter(int[] move, EvenShapeVariance variance) {
        double centre = curve.centrePercent(placeAfter(move));
        return variance.squareVariance(
                centre,
                Observation.CENTRE_ERROR_PERCENT + Observation.CENTRE_ERROR_SHARE * Math.abs(centre),
                quarterAfter(move),
                Observation.QUARTER_ERROR_PERCENT);
    }

    private double placeAfter(int[] move) {
        double place = placeDeg;
        for (int j = 0; j < move.length; j++) {
            place += response.slopeDeg()[j] * move[j];
        }
        return place;
    }

    private double quarterAfter(int[] move) {
        double quarter = quarterOffset + curve.quarterPercent(placeAfter(move));
        for (int j = 0; j < move.length; j++) {
            quarter += response.quarterSlope()[j] * move[j];
        }
        return quarter;
    }
}
