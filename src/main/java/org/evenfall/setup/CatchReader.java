package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.CatchConversion;
import org.jspecify.annotations.Nullable;

/** Catches as grams, however they were read. */
final class CatchReader {

    private final ReadSetup read;
    private final List<Finding> findings;
    private final @Nullable Double boreMm;
    private final @Nullable Double densityKgPerL;

    /** @param findings takes what is to be reported */
    CatchReader(ReadSetup read, ProductResult product, List<Finding> findings) {
        this.read = read;
        this.findings = findings;
        this.boreMm = read.number(TrayPaths.TUBE_BORE);
        this.densityKgPerL =
                product.density() == null ? null : product.density().meanKgPerL();
    }

    /** The catch at a place, g; null while it is not typed, cannot be used or cannot be turned into grams. */
    @Nullable
    Double grams(EntryPath<EnteredQuantity> at) {
        Double amount = read.number(at);
        if (amount == null) {
            return null;
        }
        return switch (read.get(TrayPaths.CATCH_KIND)) {
            case VOLUME -> ofVolume(amount, at);
            case HEIGHT -> ofHeight(amount);
            case MASS, PERCENT, UNANSWERED -> amount;
        };
    }

    private @Nullable Double ofVolume(double ml, EntryPath<EnteredQuantity> at) {
        if (densityKgPerL == null) {
            findings.add(Finding.note(Step.TRAYS, "trays.needsDensity").at(at.pointer()));
            return null;
        }
        return CatchConversion.gramsOfMl(ml, densityKgPerL);
    }

    private @Nullable Double ofHeight(double mm) {
        if (densityKgPerL == null || boreMm == null) {
            findings.add(Finding.note(Step.TRAYS, "trays.needsBore").at(TrayPaths.TUBE_BORE.pointer()));
            return null;
        }
        return CatchConversion.gramsOfHeightMm(mm, boreMm, densityKgPerL);
    }
}
