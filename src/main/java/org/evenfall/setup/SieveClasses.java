package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.quantity.Dimension;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Limits;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.Range;
import org.jspecify.annotations.Nullable;

/** Apertures and class amounts as numbers, of the product's samples and of tested products alike. */
final class SieveClasses {

    /** Fewest sieves from which a size distribution is fitted. */
    static final int FEWEST_SIEVES = 2;

    /** Most sieves that are understood. */
    static final int MOST_SIEVES = 8;

    /** Assumption: shares that were rounded by class may miss 100 % by this, points. */
    private static final double SHARES_ROUNDING_PERCENT = 2.5;

    private static final Limits WHOLE_PERCENT =
            new Limits(100 - SHARES_ROUNDING_PERCENT, 100 + SHARES_ROUNDING_PERCENT);

    private final ReadSetup read;
    private final List<Finding> findings;

    /** @param findings takes what is to be reported */
    SieveClasses(ReadSetup read, List<Finding> findings) {
        this.read = read;
        this.findings = findings;
    }

    /** Apertures in mm, rising; null with a finding when they cannot be used, null without one when none is typed. */
    @Nullable
    List<Double> apertures(EntryPath<List<EnteredQuantity>> list) {
        List<EnteredQuantity> typed = list.get(read.setup());
        if (typed.stream().allMatch(EnteredQuantity::isBlank)) {
            return null;
        }
        List<Double> apertures = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            EntryPath<EnteredQuantity> at = QuantityList.item(list, i);
            Double aperture = read.number(at);
            if (aperture == null) {
                if (typed.get(i).isBlank()) {
                    findings.add(Finding.warn(list.step(), "product.apertureBlank", Arg.count(i + 1L))
                            .at(at.pointer()));
                }
                return null;
            }
            if (!apertures.isEmpty() && aperture <= apertures.get(apertures.size() - 1)) {
                findings.add(Finding.stop(list.step(), "product.aperturesOrder").at(list.pointer()));
                return null;
            }
            apertures.add(aperture);
        }
        if (apertures.size() < FEWEST_SIEVES || apertures.size() > MOST_SIEVES) {
            findings.add(Finding.stop(list.step(), "product.aperturesCount", Arg.count(apertures.size()))
                    .at(list.pointer()));
            return null;
        }
        return apertures;
    }

    /** Amounts of one sample, finest class first; null when it is blank or, with a finding, when it cannot be used. */
    @Nullable
    List<Double> sample(EntryPath<List<EnteredQuantity>> list, int classes, Range range) {
        List<EnteredQuantity> typed = list.get(read.setup());
        if (typed.stream().allMatch(EnteredQuantity::isBlank)) {
            return null;
        }
        if (typed.size() > classes) {
            findings.add(Finding.stop(list.step(), "product.classCount", Arg.count(classes), Arg.count(typed.size()))
                    .at(list.pointer()));
            return null;
        }
        List<Double> amounts = new ArrayList<>();
        for (int i = 0; i < classes; i++) {
            EntryPath<EnteredQuantity> at = QuantityList.item(list, i);
            Double amount = read.number(at);
            if (amount == null) {
                if (at.get(read.setup()).isBlank()) {
                    findings.add(Finding.note(list.step(), "product.classOpen").at(at.pointer()));
                }
                return null;
            }
            amounts.add(amount);
        }
        return checked(amounts, list, range);
    }

    private @Nullable List<Double> checked(List<Double> amounts, EntryPath<List<EnteredQuantity>> list, Range range) {
        double sum = amounts.stream().mapToDouble(Double::doubleValue).sum();
        if (sum <= 0) {
            findings.add(Finding.stop(list.step(), "product.nothingSieved").at(list.pointer()));
            return null;
        }
        if (range.core().dimension() == Dimension.SHARE && !WHOLE_PERCENT.contain(sum)) {
            findings.add(Finding.warn(list.step(), "product.notHundred", Arg.number(sum, 1, Unit.PERCENT))
                    .at(list.pointer()));
        }
        return amounts;
    }
}
