package org.evenfall.setup;

import java.util.List;
import org.evenfall.quantity.Dimension;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.TrayEntries;

/** What another way of reading the catches changes: every number typed stays, a unit that no longer fits is replaced. */
public final class CatchKindChange {

    private CatchKindChange() {}

    /** The entries with their catches read this way. */
    public static TrayEntries to(TrayEntries entries, AmountKind kind) {
        Unit usual = switch (kind) {
            case VOLUME -> Unit.ML;
            case HEIGHT -> Unit.MM;
            case MASS, PERCENT, UNANSWERED -> Unit.G;
        };
        return entries.withCatchKind(kind)
                .withTests(entries.tests().stream()
                        .map(test -> test.withCatches(fitting(test.catches(), usual)))
                        .toList())
                .withLine(entries.line().stream()
                        .map(tray -> tray.withAmount(fitting(tray.amount(), usual)))
                        .toList())
                .withReadingStep(fitting(entries.readingStep(), usual));
    }

    private static List<EnteredQuantity> fitting(List<EnteredQuantity> typed, Unit usual) {
        return typed.stream().map(one -> fitting(one, usual)).toList();
    }

    private static EnteredQuantity fitting(EnteredQuantity typed, Unit usual) {
        Dimension dimension = usual.dimension();
        return typed.unit().dimension() == dimension ? typed : typed.withUnit(usual);
    }
}
