package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;
import org.jspecify.annotations.Nullable;

/** Computes the first move on paper from the plan of the test and the model of the advice. */
public final class FirstMoves {

    /** Assumption: a tray further off than this share of the expected catch tells of the rate, or of a spilt tray. */
    private static final double NEAR_ENOUGH = 0.15;

    /** Limits are this many standard errors of the noise; as for a shape in a test. */
    private static final double ERRORS = 2;

    /** Assumption: where the sum is beyond its limit, the shape is in the median this many times the shape at the limit. */
    private static final double BEYOND = 2;

    /** Midway from the tramline to the overlap, share of the width: nearer trays are the middle ones. */
    private static final double MIDDLE = 0.25;

    private final TrayLayout layout;
    private final Tramlines tramlines;
    private final double noise;
    private final double expectedG;

    private FirstMoves(TrayLayout layout, Tramlines tramlines, CatchPlan plan) {
        this.layout = layout;
        this.tramlines = tramlines;
        this.noise = plan.noiseAtRunsPercent() / 100;
        this.expectedG = plan.runsNeeded() * plan.catchPerRunG();
    }

    /**
     * The first move.
     *
     * @param levers what may be moved; only one with a known direction is
     * @param settings settings before the test, lever label to setting
     * @param granuleG mean granule, g, above 0
     */
    public static FirstMove of(
            TrayLayout layout,
            Tramlines tramlines,
            CatchPlan plan,
            List<Lever> levers,
            Map<String, Double> settings,
            double granuleG) {
        return new FirstMoves(layout, tramlines, plan).move(plan, levers, settings, granuleG);
    }

    private FirstMove move(CatchPlan plan, List<Lever> levers, Map<String, Double> settings, double granuleG) {
        List<Integer> middle = new ArrayList<>();
        List<Integer> left = new ArrayList<>();
        List<Integer> right = new ArrayList<>();
        List<Double> places = layout.positionsM();
        for (int i = 0; i < places.size(); i++) {
            if (Math.abs(places.get(i)) < MIDDLE * tramlines.widthM()) {
                middle.add(i + 1);
            }
        }
        for (MirrorPairs.Partners two : MirrorPairs.partners(places, tramlines)) {
            left.add(two.left() + 1);
            right.add(two.right() + 1);
        }
        double sumG = middle.size() * expectedG;
        double limitG = ERRORS * noise * expectedG * Math.sqrt(middle.size());
        double amplitude = BEYOND * limitG / expectedG / weight(middle);
        List<Lever> usable = levers.stream()
                .filter(lever -> settings.containsKey(lever.label()) && lever.widerSign() != 0)
                .toList();
        return new FirstMove(
                plan.runsNeeded(),
                expectedG,
                (1 - NEAR_ENOUGH) * expectedG,
                (1 + NEAR_ENOUGH) * expectedG,
                middle,
                sumG + limitG,
                sumG - limitG,
                left,
                right,
                ERRORS * noise * expectedG * Math.sqrt(2.0 * left.size()),
                best(usable, settings, granuleG, plan.runsNeeded(), amplitude),
                best(usable, settings, granuleG, plan.runsNeeded(), -amplitude));
    }

    /** How much of a centre-overlap shape of amplitude 1 is in the sum of the middle trays, in trays. */
    private double weight(List<Integer> middle) {
        return middle.stream()
                .mapToDouble(number ->
                        ShapeKind.CENTRE_OVERLAP.at(layout.positionsM().get(number - 1), tramlines))
                .sum();
    }

    /** The move of one lever that is best for such a shape; null where none is expected to help. */
    private @Nullable LeverMove best(
            List<Lever> levers, Map<String, Double> settings, double granuleG, int runs, double amplitude) {
        List<Double> catchesG = layout.positionsM().stream()
                .map(x -> expectedG * Math.max(0, 1 + amplitude * ShapeKind.CENTRE_OVERLAP.at(x, tramlines)))
                .toList();
        Uniformity test = UniformityCalculator.of(new TrayCatches(
                layout.positionsM(),
                catchesG,
                tramlines.widthM(),
                tramlines.pattern(),
                layout.trayAreaM2(),
                runs,
                granuleG,
                0));
        Diagnosis shape = Diagnosis.of(test).orElse(null);
        if (levers.isEmpty() || shape == null) {
            return null;
        }
        ResponseModel model = new ResponseModel(
                List.of(new AdviceInput.DoneTest(test, settings, null)), test, shape, levers, tramlines, 0);
        MoveChooser chooser = new MoveChooser(levers, settings, new int[levers.size()], model);
        int[] move = chooser.best(false, 0);
        return move == null ? null : chooser.moves(move).get(0);
    }
}
