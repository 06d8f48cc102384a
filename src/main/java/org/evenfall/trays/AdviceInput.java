package org.evenfall.trays;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What the next move is chosen from.
 *
 * @param tests tests on this machine with this product, oldest first
 * @param levers what may be moved
 * @param machineOrder what is known of machine and product
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
     * @param trayNumbers number of each tray that was read, from 1, as they lie
     * @param runs how many times the three passes were driven, at least 1
     */
    public record DoneTest(
            Uniformity evenness,
            Map<String, Double> settings,
            @Nullable Double windMPerS,
            List<Integer> trayNumbers,
            int runs) {

        /** @throws IllegalArgumentException for a negative wind, no run, or not one number a tray */
        public DoneTest {
            settings = Map.copyOf(settings);
            trayNumbers = List.copyOf(trayNumbers);
            if (runs < 1 || trayNumbers.size() != evenness.trays()) {
                throw new IllegalArgumentException("runs at least 1, one number a tray: " + runs + ", " + trayNumbers);
            }
            if (windMPerS != null && !(windMPerS >= 0)) {
                throw new IllegalArgumentException("windMPerS must be at least 0: " + windMPerS);
            }
        }

        /** A test of one run, all its trays read. */
        public DoneTest(Uniformity evenness, Map<String, Double> settings, @Nullable Double windMPerS) {
            this(
                    evenness,
                    settings,
                    windMPerS,
                    IntStream.rangeClosed(1, evenness.trays()).boxed().toList(),
                    1);
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
