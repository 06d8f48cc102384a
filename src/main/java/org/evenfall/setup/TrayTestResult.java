package org.evenfall.setup;

import java.util.List;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/**
 * One tray test assessed.
 *
 * @param index which of the entered tests, from 0
 * @param date in the form of ISO 8601 (2027-04-30); as typed where it is no date
 * @param evenness how even
 * @param settings how the machine was set
 * @param openingLeft opening or factor left; null while it is not typed
 * @param openingRight opening or factor right; null while it is not typed
 * @param windMPerS wind during the test, m/s; null while it is not typed
 * @param conditions what else it was driven under
 * @param proof what it still proves
 */
public record TrayTestResult(
        int index,
        String date,
        Uniformity evenness,
        ReadSettings settings,
        @Nullable Double openingLeft,
        @Nullable Double openingRight,
        @Nullable Double windMPerS,
        TestConditions conditions,
        TestProof proof) {

    /**
     * What a test still proves.
     *
     * @param comparable driven at the present width, with the present driving pattern and product
     * @param differences conditions that keep it from proving the present settings; empty where it proves them
     * @param assumed label keys of conditions that it does not state and that count as they are now
     */
    public record TestProof(boolean comparable, List<ConditionKind> differences, List<String> assumed) {

        /** Copies the lists. */
        public TestProof {
            differences = List.copyOf(differences);
            assumed = List.copyOf(assumed);
        }

        /** Whether it proves the present settings. */
        public boolean proves() {
            return differences.isEmpty();
        }
    }
}
