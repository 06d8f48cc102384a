package org.evenfall.trays;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the next move is chosen from.
 *
 * @param tests tests on this machine with this product, oldest first
 * @param levers what may be moved
 * @param machineOrder what of the machine is in order
 * @param tramlines how the field is driven
 * @param windLimits limits for the wind
 */
public record AdviceInput(
        List<DoneTest> tests,
        LeverRules levers,
        MachineOrder machineOrder,
        Tramlines tramlines,
        WindLimits windLimits) {

    /**
     * One test with the settings of the machine.
     *
     * @param evenness its result
     * @param settings lever label to setting
     * @param windMPerS wind during it, m/s, at least 0; null where not measured
     */
    public record DoneTest(
            Uniformity evenness,
            Map<String, Double> settings,
            @Nullable Double windMPerS) {

        /** @throws IllegalArgumentException for a negative wind */
        public DoneTest {
            settings = Map.copyOf(settings);
            if (windMPerS != null && !(windMPerS >= 0)) {
                throw new IllegalArgumentException("windMPerS must be at least 0: " + windMPerS);
            }
        }
    }

    /** Copies the list. */
    public AdviceInput {
        tests = List.copyOf(tests);
    }

    /**
     * The last test: its settings are those of the machine now.
     *
     * @throws java.util.NoSuchElementException without a test
     */
    DoneTest last() {
        return tests.stream().reduce((before, after) -> after).orElseThrow();
    }
}
