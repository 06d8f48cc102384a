package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.granule.SieveReading;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.Sieves;
import org.evenfall.granule.SizePeaks;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.SievingEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.ProductPaths;
import org.jspecify.annotations.Nullable;

/** Step 1: the sieved samples. */
final class SieveAssessor {

    /** Assumption: a class whose measured and fitted shares differ by more does not belong to one log-normal, points. */
    private static final double WORST_RESIDUAL_PERCENT = 6;

    /** Share under 2 mm, %. Source: farm press, good sign for wide work: 80–90 % of urea above 2 mm. */
    private static final double MOST_UNDER_2_MM_PERCENT = 10;

    /**
     * Assumption: share of one class above which a straight line through it widens the spread index by more than about
     * 4 points.
     */
    static final double MOST_IN_A_CLASS_PERCENT = 40;

    private static final String AT = ProductPaths.SIEVINGS.pointer();

    private SieveAssessor() {}

    static Assessed<SieveResult> assess(ReadSetup read) {
        List<Finding> findings = new ArrayList<>();
        SieveResult result = result(read, findings);
        if (result != null) {
            addFindings(result, findings);
        }
        return new Assessed<>(result, findings);
    }

    private static @Nullable SieveResult result(ReadSetup read, List<Finding> findings) {
        SieveClasses classes = new SieveClasses(read, findings);
        List<Double> apertures = classes.apertures(ProductPaths.APERTURES.path());
        boolean anyAmount = read.get(ProductPaths.SIEVINGS).stream()
                .anyMatch(sieving -> !ProductPaths.SIEVING_AMOUNTS.isBlank(sieving.amounts()));
        if (apertures == null || !anyAmount) {
            if (read.isBlank(ProductPaths.MEDIAN_SIZE)) {
                findings.add(Finding.note(Step.PRODUCT, "missing.sieve").at(AT));
            }
            return null;
        }
        List<List<Double>> samples = new ArrayList<>();
        for (int i = 0; i < read.get(ProductPaths.SIEVINGS).size(); i++) {
            EntryPath<SievingEntry> at = ProductPaths.SIEVINGS.item(i);
            List<Double> sample = classes.sample(
                    ProductPaths.SIEVING_AMOUNTS.at(at),
                    apertures.size() + 1,
                    ProductPaths.SIEVING_AMOUNTS.range(read.setup()));
            if (sample != null) {
                samples.add(sample);
            }
        }
        return samples.isEmpty() ? null : Sieves.analyse(apertures, samples);
    }

    /** Whether one class between two sieves holds so much that the line through it makes the spread too wide. */
    private static boolean isCoarse(SieveResult result) {
        List<Double> shares = result.sharesPercent();
        return shares.subList(1, shares.size() - 1).stream().anyMatch(share -> share > MOST_IN_A_CLASS_PERCENT);
    }

    private static void addFindings(SieveResult result, List<Finding> findings) {
        if (result.distribution().spreadIsBound()) {
            findings.add(Finding.note(Step.PRODUCT, "product.spreadIsBound")
                    .from("source.sieveFit")
                    .at(AT));
        }
        if (result.worstResidualPercent() > WORST_RESIDUAL_PERCENT) {
            Arg off = Arg.number(result.worstResidualPercent(), 0, Unit.NONE);
            boolean two = SizePeaks.isTwo(result.aperturesMm(), result.sharesPercent());
            Finding finding = two
                    ? Finding.warn(Step.PRODUCT, "product.notOneHump", off)
                    : Finding.note(Step.PRODUCT, "product.fitOff", off);
            findings.add(finding.from("source.sieveFit").at(AT));
        }
        if (result.readFrom().spreadIndexPercent() == SieveReading.CURVE && isCoarse(result)) {
            findings.add(Finding.note(Step.PRODUCT, "product.sievesFarApart")
                    .from("source.sievesFarApart")
                    .at(AT));
        }
        if (result.shareUnder2MmPercent() > MOST_UNDER_2_MM_PERCENT) {
            findings.add(Finding.warn(
                            Step.PRODUCT, "product.fines", Arg.number(result.shareUnder2MmPercent(), 0, Unit.PERCENT))
                    .at(AT)
                    .from("source.ureaSize"));
        }
        if (result.samples() == 1) {
            findings.add(Finding.note(Step.PRODUCT, "product.oneSample").at(AT));
        }
    }
}
