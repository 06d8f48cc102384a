package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Asks back a catch that may be a typing error: two digits swapped, or one order of magnitude. It counts all the same. */
final class CatchSlips {

    /** Assumption: a catch this many times the median, or this small a part of it, is asked back. */
    private static final double SLIP_FACTOR = 5;

    /** Assumption: a catch this far off the median is checked for swapped digits (natural logarithm: 1.6 times). */
    private static final double FAR = 0.47;

    /** Assumption: this near the median the swapped digits must lead, relative. */
    private static final double NEAR = 0.2;

    private CatchSlips() {}

    /**
     * One catch of a test.
     *
     * @param text as typed
     * @param grams as read, g
     * @param pointer its entry
     */
    record Catch(String text, double grams, String pointer) {}

    static List<Finding> of(List<Catch> catches) {
        List<Double> sorted = catches.stream().map(Catch::grams).sorted().toList();
        double median = sorted.get(sorted.size() / 2);
        List<Finding> findings = new ArrayList<>();
        for (Catch one : catches) {
            String swapped = swapped(one, median);
            if (swapped != null) {
                findings.add(Finding.warn(Step.TRAYS, "trays.swapped", Arg.text(one.text()), Arg.text(swapped))
                        .from("source.slips")
                        .at(one.pointer()));
            } else if (median > 0 && (one.grams() > SLIP_FACTOR * median || one.grams() < median / SLIP_FACTOR)) {
                findings.add(Finding.warn(
                                Step.TRAYS,
                                "trays.slip",
                                Arg.number(one.grams(), 1, Unit.G),
                                Arg.number(median, 1, Unit.G))
                        .from("source.slips")
                        .at(one.pointer()));
            }
        }
        return findings;
    }

    /**
     * The text with two neighbouring digits swapped, if that alone brings a catch far off back to the median. None with a zero
     * in front: nobody meant to type that.
     */
    private static @Nullable String swapped(Catch one, double median) {
        if (!(one.grams() > 0) || !(median > 0) || Math.abs(Math.log(one.grams() / median)) < FAR) {
            return null;
        }
        String text = one.text();
        double typed = number(text);
        for (int i = 0; i + 1 < text.length() && typed > 0; i++) {
            boolean leadingZero = i == 0 && text.charAt(1) == '0';
            if (!leadingZero && Character.isDigit(text.charAt(i)) && Character.isDigit(text.charAt(i + 1))) {
                String other = text.substring(0, i) + text.charAt(i + 1) + text.charAt(i) + text.substring(i + 2);
                double grams = one.grams() * number(other) / typed;
                if (Math.abs(grams / median - 1) < NEAR) {
                    return other;
                }
            }
        }
        return null;
    }

    private static double number(String text) {
        return NumberText.read(text) instanceof NumberReading.Value value ? value.value() : 0;
    }
}
