package org.evenfall.trays;

import java.util.List;
import java.util.Map;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.Lever;
import org.jspecify.annotations.Nullable;

/**
 * What the next move is chosen from.
 *
 * @param tests tests on this machine with this product, oldest first
 * @param levers levers of the machine
 * @param tramlineWidthM tramline width
 * @param levelInOrder level, height and tyres were measured and are within limits
 * @param ptoInOrder shaft speed was measured and is within limits
 * @param outletsInOrder both outlets gave the same in the bucket and the vanes passed
 * @param twoLevers the owner allows two levers to be moved at once
 * @param driving how the passes follow each other
 * @param gate limits for the wind
 */
public record AdviceInput(
        List<DoneTest> tests,
        List<Lever> levers,
        double tramlineWidthM,
        boolean levelInOrder,
        boolean ptoInOrder,
        boolean outletsInOrder,
        boolean twoLevers,
        DrivingPattern driving,
        WindLimits gate) {

    /**
     * One test with how the machine stood.
     *
     * @param evenness its result
     * @param settings lever label to setting
     * @param windMPerS wind during it, or null
     */
    public record DoneTest(
            Uniformity evenness,
            Map<String, Double> settings,
            @Nullable Double windMPerS) {

        public DoneTest {
            settings = Map.copyOf(settings);
        }
    }

    public AdviceInput {
        tests = List.copyOf(tests);
        levers = List.copyOf(levers);
    }
}
