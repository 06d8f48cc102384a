package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Typed;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.trays.CatchConversion;
import org.jspecify.annotations.Nullable;

/** One catch as grams, however it was read; and slips of the pen that are asked back. */
final class CatchReader {

    /** A catch this many times the middle one, or this small a part of it, is asked back. Ours. */
    private static final double SLIP_FACTOR = 5;

    private CatchReader() {}

    static @Nullable Double grams(
            Typed typed,
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

    /** Asks back a catch that looks like a slip of one order of magnitude; it is counted all the same. */
    static void slips(List<Double> grams, String pointer, EntryReader reader) {
        List<Double> sorted = grams.stream().sorted().toList();
        double middle = sorted.get(sorted.size() / 2);
        for (double one : grams) {
            if (middle > 0 && (one > SLIP_FACTOR * middle || one < middle / SLIP_FACTOR)) {
                reader.add(Finding.warn(
                                Step.TRAYS, "trays.slip", Arg.number(one, 1, Unit.G), Arg.number(middle, 1, Unit.G))
                        .at(pointer));
            }
        }
    }
}
