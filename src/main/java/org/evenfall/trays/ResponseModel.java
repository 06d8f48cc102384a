package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.evenfall.machine.Lever;
import org.hipparchus.random.HaltonSequenceGenerator;
import org.jspecify.annotations.Nullable;

/**
 * What the tests so far say of how the levers move the shapes. Unknown are: which curve the machine follows
 * ({@link ShapeCurve}), where on it the machine stands now, and for each lever how far one step goes along the curve, which
 * way, and what it does to the quarter points beside it. Every test adds what its noise allows; nothing is fitted to one
 * figure. Bayesian: the lever unknowns are drawn once from their priors by a fixed even sequence (no chance in it), the
 * place on the curve is a grid, and each combination is weighted by how well it explains the tests.
 *
 * <p>Priors (ours): a step goes 2° along the curve, between 0.8° and 5° (90 %); the owner's direction is right with
 * {@value #OWNER_RIGHT}; beside that a step changes the quarter points by up to {@value #QUARTER_SD_PERCENT} % (one
 * standard deviation).
 */
final class ResponseModel {

    private static final int DRAWS = 192;

    /** The even sequence has so many dimensions; levers beyond share them. */
    private static final int MOST_DIMENSIONS = 40;

    private static final double STEP_DEG = 2;
    private static final double STEP_LN_SD = 0.55;
    private static final double OWNER_RIGHT = 0.97;
    private static final double QUARTER_SD_PERCENT = 0.8;

    /** How far a curve may be beside the truth: centre-overlap and quarter points, % of the mean. */
    private static final double CENTRE_ERROR_PERCENT = 2;

    private static final double CENTRE_ERROR_SHARE = 0.08;
    private static final double QUARTER_ERROR_PERCENT = 2;

    /** A constant part in the quarter points that the curve does not know, %. */
    private static final double QUARTER_OFFSET_PERCENT = 8;

    private static final int PLACES = 121;
    private static final double LEAST_WEIGHT = 1e-4;

    /** CVs are told apart up to 300 %. */
    private static final int CV_TENTHS = 3000;

    /** Further off than this, in squared standard errors, nothing explains the last test. */
    private static final double FAR_SQUARE = 30;

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /** One test as the model sees it; its steps are never compared nor given away. */
    @SuppressWarnings("ArrayRecordComponent")
    private record Seen(double centre, double centreVariance, double quarter, double quarterVariance, double[] steps) {}

    /** One combination that explains the tests; its arrays are shared by many and never compared nor given away. */
    @SuppressWarnings("ArrayRecordComponent")
    private record Belief(
            ShapeCurve curve, double place, double[] step, double[] beside, double offset, double weight) {}

    private final List<Lever> levers;
    private final List<Seen> tests = new ArrayList<>();
    private final List<Belief> beliefs = new ArrayList<>();
    private final double centreShare;
    private final double quarterShare;
    private final double crossShare;
    private final double rest;

    /**
     * @param done tests with both even shapes, oldest first; the last is where the machine stands
     * @param levers levers that may be moved
     * @param curves what is known before
     */
    ResponseModel(List<AdviceInput.DoneTest> done, List<Lever> levers, List<ShapeCurve> curves, double widthM) {
        this.levers = levers;
        AdviceInput.DoneTest last = done.get(done.size() - 1);
        for (AdviceInput.DoneTest test : done) {
            Seen seen = seen(test, last.settings());
            if (seen != null) {
                tests.add(seen);
            }
        }
        List<Double> positions = last.evenness().positionsM();
        centreShare = Shapes.covariance(positions, widthM, 1, 1);
        quarterShare = Shapes.covariance(positions, widthM, 2, 2);
        crossShare = Shapes.covariance(positions, widthM, 1, 2);
        rest = rest(last.evenness());
        weigh(curves);
    }

    private double rest(Uniformity evenness) {
        Double machine = evenness.machineCvPercent();
        SpreadShape centre = mode(evenness, Shapes.CENTRE_OVERLAP);
        SpreadShape quarter = mode(evenness, Shapes.QUARTER_POINTS);
        if (machine == null || centre == null || quarter == null) {
            return 0;
        }
        return Math.max(0, machine * machine - square(centre.amplitudePercent(), quarter.amplitudePercent()));
    }

    private double square(double centre, double quarter) {
        return centreShare * centre * centre + quarterShare * quarter * quarter + 2 * crossShare * centre * quarter;
    }

    private @Nullable Seen seen(AdviceInput.DoneTest test, Map<String, Double> now) {
        SpreadShape centre = mode(test.evenness(), Shapes.CENTRE_OVERLAP);
        SpreadShape quarter = mode(test.evenness(), Shapes.QUARTER_POINTS);
        if (centre == null || quarter == null) {
            return null;
        }
        double[] steps = new double[levers.size()];
        for (int j = 0; j < steps.length; j++) {
            Lever lever = levers.get(j);
            Double then = test.settings().get(lever.label());
            Double here = now.get(lever.label());
            steps[j] = then == null || here == null ? 0 : (then - here) / lever.step();
        }
        double model = CENTRE_ERROR_PERCENT + CENTRE_ERROR_SHARE * Math.abs(centre.amplitudePercent());
        return new Seen(
                centre.amplitudePercent(),
                centre.noisePercent() * centre.noisePercent() + model * model,
                quarter.amplitudePercent(),
                quarter.noisePercent() * quarter.noisePercent() + QUARTER_ERROR_PERCENT * QUARTER_ERROR_PERCENT,
                steps);
    }

    static @Nullable SpreadShape mode(Uniformity evenness, String name) {
        return evenness.modes().stream()
                .filter(mode -> mode.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private void weigh(List<ShapeCurve> curves) {
        int n = levers.size();
        HaltonSequenceGenerator even = new HaltonSequenceGenerator(Math.max(1, Math.min(MOST_DIMENSIONS, 3 * n)));
        even.skipTo(1);
        List<List<Double>> places = places(curves);
        List<Belief> all = new ArrayList<>();
        double most = Double.NEGATIVE_INFINITY;
        for (int draw = 0; draw < DRAWS; draw++) {
            double[] point = even.nextVector();
            double[] step = new double[n];
            double[] beside = new double[n];
            for (int j = 0; j < n; j++) {
                double size = STEP_DEG
                        * Math.exp(
                                STEP_LN_SD * NORMAL.inverseCumulativeProbability(inside(point[3 * j % point.length])));
                step[j] = size * sign(levers.get(j), point[(3 * j + 1) % point.length]);
                beside[j] = QUARTER_SD_PERCENT
                        * NORMAL.inverseCumulativeProbability(inside(point[(3 * j + 2) % point.length]));
            }
            for (int c = 0; c < curves.size(); c++) {
                ShapeCurve curve = curves.get(c);
                for (double place : places.get(c)) {
                    Belief belief = explain(curve, place, step, beside);
                    most = Math.max(most, belief.weight());
                    if (belief.weight() > most + Math.log(LEAST_WEIGHT)) {
                        all.add(belief);
                    }
                }
            }
        }
        double floor = most + Math.log(LEAST_WEIGHT);
        for (Belief belief : all) {
            if (belief.weight() > floor) {
                beliefs.add(new Belief(
                        belief.curve(),
                        belief.place(),
                        belief.step(),
                        belief.beside(),
                        belief.offset(),
                        Math.exp(belief.weight() - most)));
            }
        }
    }

    /** Places on each curve that the last test allows at all; all of them where it allows none. */
    private List<List<Double>> places(List<ShapeCurve> curves) {
        List<List<Double>> allowed = places(curves, FAR_SQUARE);
        return allowed.stream().allMatch(List::isEmpty) ? places(curves, Double.MAX_VALUE) : allowed;
    }

    private List<List<Double>> places(List<ShapeCurve> curves, double mostSquare) {
        Seen last = tests.isEmpty() ? null : tests.get(tests.size() - 1);
        List<List<Double>> all = new ArrayList<>();
        for (ShapeCurve curve : curves) {
            List<Double> places = new ArrayList<>();
            for (int i = 0; i < PLACES; i++) {
                double place = curve.lowest() + (curve.highest() - curve.lowest()) * i / (PLACES - 1.0);
                double off = last == null ? 0 : last.centre() - curve.centrePercent(place);
                if (last == null || off * off / last.centreVariance() <= mostSquare) {
                    places.add(place);
                }
            }
            all.add(places);
        }
        return all;
    }

    private static double inside(double share) {
        return Math.max(1e-4, Math.min(1 - 1e-4, share));
    }

    private static double sign(Lever lever, double share) {
        if (lever.widerSign() == 0) {
            return share < 0.5 ? 1 : -1;
        }
        return share < OWNER_RIGHT ? lever.widerSign() : -lever.widerSign();
    }

    /** Log weight of a combination; the offset of the quarter points is averaged out. */
    private Belief explain(ShapeCurve curve, double place, double[] step, double[] beside) {
        double log = 0;
        double s0 = 1 / (QUARTER_OFFSET_PERCENT * QUARTER_OFFSET_PERCENT);
        double s1 = 0;
        for (Seen test : tests) {
            double there = place;
            double quarter = 0;
            for (int j = 0; j < step.length; j++) {
                there += step[j] * test.steps()[j];
                quarter += beside[j] * test.steps()[j];
            }
            double off = test.centre() - curve.centrePercent(there);
            log -= 0.5 * off * off / test.centreVariance();
            double aside = test.quarter() - curve.quarterPercent(there) - quarter;
            s0 += 1 / test.quarterVariance();
            s1 += aside / test.quarterVariance();
            log -= 0.5 * aside * aside / test.quarterVariance();
        }
        return new Belief(curve, place, step, beside, s1 / s0, log + 0.5 * s1 * s1 / s0);
    }

    /**
     * What a move is expected to give.
     *
     * @param square expected CV², %²
     * @param low CV at 5 %, %
     * @param high CV at 95 %, %
     */
    record Outlook(double square, double low, double high) {}

    /** Expected CV² after a move of each lever by whole steps up its scale, %². */
    double square(int[] move) {
        double sum = 0;
        double weights = 0;
        for (Belief belief : beliefs) {
            sum += belief.weight() * after(belief, move);
            weights += belief.weight();
        }
        return sum / weights;
    }

    private double after(Belief belief, int[] move) {
        double place = belief.place();
        double quarter = belief.offset();
        for (int j = 0; j < move.length; j++) {
            place += belief.step()[j] * move[j];
            quarter += belief.beside()[j] * move[j];
        }
        return Math.max(
                0,
                rest
                        + square(
                                belief.curve().centrePercent(place),
                                quarter + belief.curve().quarterPercent(place)));
    }

    /** The same with its 90 % interval, told to a tenth of a percent. */
    Outlook outlook(int[] move) {
        double[] weightAt = new double[CV_TENTHS + 1];
        double weights = 0;
        double sum = 0;
        for (Belief belief : beliefs) {
            double square = after(belief, move);
            weightAt[(int) Math.min(CV_TENTHS, 10 * Math.sqrt(square))] += belief.weight();
            weights += belief.weight();
            sum += belief.weight() * square;
        }
        return new Outlook(sum / weights, quantile(weightAt, 0.05 * weights), quantile(weightAt, 0.95 * weights));
    }

    private static double quantile(double[] weightAt, double passed) {
        double left = passed;
        int tenths = 0;
        while (tenths < CV_TENTHS && left > weightAt[tenths]) {
            left -= weightAt[tenths];
            tenths++;
        }
        return tenths / 10.0;
    }

    /** How sure the tests are that a lever throws wider up its scale, 0 to 1. */
    double widerUp(int lever) {
        double up = 0;
        double weights = 0;
        for (Belief belief : beliefs) {
            up += belief.step()[lever] > 0 ? belief.weight() : 0;
            weights += belief.weight();
        }
        return up / weights;
    }
}
