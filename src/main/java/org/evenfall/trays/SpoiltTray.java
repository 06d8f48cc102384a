package org.evenfall.trays;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.evenfall.flight.DrivingPattern;

/**
 * A tray that the others do not allow: spilt, overturned, or typed wrongly. Each tray is predicted from the others by the
 * model of the field CV ({@link FieldCvPrior}): weighed by how well it explains the others, each prior gives a normal
 * distribution of what the tray may hold, structure of the field and noise together. A tray is spoilt where the chance of
 * so odd a catch in any one of the trays is below {@link #LEVEL}.
 *
 * <p>Round and round the two outermost trays lie on one place of the field. Where they contradict each other, which of
 * them is spoilt is not known: both are doubtful.
 *
 * @param index which tray, from 0
 * @param readG what it caught, g
 * @param lowG least that the others allow, g
 * @param highG most that they allow, g
 * @param twin tray on the same place of the field that is as doubtful, from 0; −1 where there is none
 */
record SpoiltTray(int index, double readG, double lowG, double highG, int twin) {

    /** No tray lies on the same place. */
    static final int NO_TWIN = -1;

    /** Chance of a false alarm under the model, in one test. Assumption: 4 %, below 3 % on simulated machines. */
    static final double LEVEL = 0.04;

    /** Assumption: two trays closer than this share of the width are on one place. */
    private static final double ONE_PLACE = 0.02;

    /** Halvings of the interval in which a quantile is looked for. */
    private static final int HALVINGS = 50;

    /** Range in which a quantile is looked for, about the middle catch. */
    private static final double FURTHEST = 4;

    /** Whether it caught too little; else too much. */
    boolean low() {
        return readG < lowG;
    }

    /** The oddest tray of a test where it is spoilt. */
    static Optional<SpoiltTray> of(Uniformity test, Tramlines tramlines) {
        List<Double> relative = test.relativePercent();
        double middle = middle(relative);
        if (!(middle > 0)) {
            return Optional.empty();
        }
        double noise = test.cv().noisePercent() / 100 * Math.sqrt(100 / middle);
        double[] caught = relative.stream().mapToDouble(each -> each / middle).toArray();
        TrayPredictions predictions = TrayPredictions.of(FieldCvModes.at(test.positionsM(), tramlines), caught, noise);
        int oddest = IntStream.range(0, caught.length)
                .boxed()
                .min((one, other) ->
                        Double.compare(tail(predictions, one, caught[one]), tail(predictions, other, caught[other])))
                .orElseThrow();
        double each = LEVEL / 2 / caught.length;
        if (tail(predictions, oddest, caught[oddest]) >= each) {
            return Optional.empty();
        }
        double grams = test.catches().meanG() * middle / 100;
        return Optional.of(new SpoiltTray(
                oddest,
                grams * caught[oddest],
                grams * Math.max(0, quantile(predictions, oddest, each)),
                grams * quantile(predictions, oddest, 1 - each),
                twin(test.positionsM(), tramlines, oddest)));
    }

    private static int twin(List<Double> places, Tramlines tramlines, int tray) {
        for (int i = 0; i < places.size(); i++) {
            double turns = Math.abs(places.get(i) - places.get(tray)) / tramlines.widthM();
            boolean round = tramlines.pattern() == DrivingPattern.ROUND_AND_ROUND;
            if (i != tray && (turns < ONE_PLACE || (round && Math.abs(turns - 1) < ONE_PLACE))) {
                return i;
            }
        }
        return NO_TWIN;
    }

    /** Chance of a catch as far out on its side. */
    private static double tail(TrayPredictions predictions, int tray, double caught) {
        double below = predictions.probabilityAtMost(tray, caught);
        return Math.min(below, 1 - below);
    }

    private static double quantile(TrayPredictions predictions, int tray, double probability) {
        double low = -FURTHEST;
        double high = FURTHEST;
        for (int i = 0; i < HALVINGS; i++) {
            double between = (low + high) / 2;
            if (predictions.probabilityAtMost(tray, between) < probability) {
                low = between;
            } else {
                high = between;
            }
        }
        return (low + high) / 2;
    }

    private static double middle(List<Double> values) {
        double[] sorted =
                values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
