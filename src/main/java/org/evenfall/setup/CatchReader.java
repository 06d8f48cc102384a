package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.trays.CatchConversion;
import org.jspecify.annotations.Nullable;

/** One catch as grams, however it was read; and slips of the pen that are asked back. */
final class CatchReader {

    /** A catch this many times the middle one, or this small a part of it, is asked back. Ours. */
    private static final double SLIP_FACTOR = 5;

    /** So far off the middle one a catch is looked at for swapped digits (natural logarithm: 1.6 times). Ours. */
    private static final double FAR = 0.47;

    /** So near the middle one the swapped digits must lead. Ours. */
    private static final double NEAR = 0.2;

    private CatchReader() {}

    /** One catch, or the catches of several runs with a plus between them. */
    static @Nullable Double grams(
            EnteredQuantity typed,
            AmountKind kind,
            @Nullable Double boreMm,
            @Nullable Double densityKgPerL,
            String pointer,
            EntryReader reader) {
        double sum = 0;
        for (String run : typed.text().split("\\+", -1)) {
            Double grams = one(typed.withText(run.strip()), kind, boreMm, densityKgPerL, pointer, reader);
            if (grams == null) {
                return null;
            }
            sum += grams;
        }
        return sum;
    }

    private static @Nullable Double one(
            EnteredQuantity typed,
            AmountKind kind,
            @Nullable Double boreMm,
            @Nullable Double densityKgPerL,
            String pointer,
            EntryReader reader) {
        return switch (TraysAssessor.kindOrMass(kind)) {
            case VOLUME -> {
                Double ml = reader.read(typed, Fields.CATCH_VOLUME, pointer);
                if (ml != null && densityKgPerL == null) {
                    reader.add(Finding.note(Step.TRAYS, "trays.needsDensity").at(pointer));
                }
                yield ml == null || densityKgPerL == null
                        ? null
                        : Double.valueOf(CatchConversion.gramsOfMl(ml, densityKgPerL));
            }
            case HEIGHT -> {
                Double mm = reader.read(typed, Fields.CATCH_HEIGHT, pointer);
                if (mm != null && (densityKgPerL == null || boreMm == null)) {
                    reader.add(Finding.note(Step.TRAYS, "trays.needsBore").at("/trays/tubeBore"));
                }
                yield mm == null || densityKgPerL == null || boreMm == null
                        ? null
                        : Double.valueOf(CatchConversion.gramsOfHeightMm(mm, boreMm, densityKgPerL));
            }
            case MASS, PERCENT, UNANSWERED -> reader.read(typed, Fields.CATCH_MASS, pointer);
        };
    }

    /**
     * Asks back a catch that looks like a slip: two digits swapped, or one order of magnitude. It is counted all the same.
     *
     * @param typed what was typed, one for each of the grams
     */
    static void slips(List<EnteredQuantity> typed, List<Double> grams, String pointer, EntryReader reader) {
        List<Double> sorted = grams.stream().sorted().toList();
        double middle = sorted.get(sorted.size() / 2);
        for (int i = 0; i < grams.size(); i++) {
            double one = grams.get(i);
            String swapped = swapped(typed.get(i).text().strip(), one, middle);
            if (swapped != null) {
                reader.add(Finding.warn(
                                Step.TRAYS,
                                "trays.swapped",
                                Arg.text(typed.get(i).text().strip()),
                                Arg.text(swapped))
                        .at(pointer));
            } else if (middle > 0 && (one > SLIP_FACTOR * middle || one < middle / SLIP_FACTOR)) {
                reader.add(Finding.warn(
                                Step.TRAYS, "trays.slip", Arg.number(one, 1, Unit.G), Arg.number(middle, 1, Unit.G))
                        .at(pointer));
            }
        }
    }

    /** The text with two neighbouring digits swapped, if that alone brings a catch far off back to the middle one. */
    private static @Nullable String swapped(String text, double grams, double middle) {
        if (!(grams > 0) || !(middle > 0) || Math.abs(Math.log(grams / middle)) < FAR) {
            return null;
        }
        double read = NumberText.read(text) instanceof NumberReading.Value value ? value.value() : 0;
        for (int i = 0; i + 1 < text.length(); i++) {
            if (Character.isDigit(text.charAt(i)) && Character.isDigit(text.charAt(i + 1))) {
                String other = text.substring(0, i) + text.charAt(i + 1) + text.charAt(i) + text.substring(i + 2);
                if (read > 0
                        && NumberText.read(other) instanceof NumberReading.Value value
                        && Math.abs(value.value() / read * grams / middle - 1) < NEAR) {
                    return other;
                }
            }
        }
        return null;
    }
}
