package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.granule.BulkDensities;
import org.evenfall.granule.BulkDensity;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.PublishedBand;
import org.evenfall.granule.PublishedBands;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.Limits;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.ProductPaths;
import org.jspecify.annotations.Nullable;

/** Step 1: bulk density from repeated fillings of a container of known volume. */
final class DensityAssessor {

    /** Assumption: a farm scale that shows grams, kg. */
    private static final double SCALE_STEP_KG = 0.001;

    /** Half the last digit in which a bulk density is shown, kg/L: less is no difference from a published band. */
    private static final double BAND_ROUNDING_KG_PER_L = 0.005;

    private static final String AT = ProductPaths.CONTAINER_FULL.pointer();

    private final ReadSetup read;
    private final List<Finding> findings = new ArrayList<>();

    private DensityAssessor(ReadSetup read) {
        this.read = read;
    }

    static Assessed<BulkDensity> assess(ReadSetup read) {
        DensityAssessor assessor = new DensityAssessor(read);
        return new Assessed<>(assessor.density(), assessor.findings);
    }

    private @Nullable BulkDensity density() {
        Double volumeL = read.number(ProductPaths.CONTAINER_VOLUME);
        List<Double> fullKg = read.numbers(ProductPaths.CONTAINER_FULL);
        if (volumeL == null) {
            findings.add(Finding.missing(Step.PRODUCT, "missing.containerVolume")
                    .at(ProductPaths.CONTAINER_VOLUME.pointer()));
        }
        if (fullKg.size() < BulkDensities.FEWEST_FILLINGS) {
            findings.add(Finding.missing(Step.PRODUCT, "missing.fillings").at(AT));
        }
        if (volumeL == null || fullKg.isEmpty()) {
            return null;
        }
        List<Double> netKg = net(fullKg);
        return netKg == null ? null : density(netKg, volumeL);
    }

    /**
     * Weights without the container; null with a finding when a filled container is no heavier than the empty one, null
     * without one when the empty weight is typed but cannot be used.
     */
    private @Nullable List<Double> net(List<Double> fullKg) {
        Double emptyKg = read.number(ProductPaths.CONTAINER_EMPTY);
        if (emptyKg == null && !read.isBlank(ProductPaths.CONTAINER_EMPTY)) {
            return null;
        }
        if (emptyKg == null) {
            findings.add(Finding.note(Step.PRODUCT, "product.noTare").at(ProductPaths.CONTAINER_EMPTY.pointer()));
        }
        double tareKg = emptyKg == null ? 0 : emptyKg;
        List<Double> netKg = new ArrayList<>();
        for (double full : fullKg) {
            if (full <= tareKg) {
                findings.add(Finding.stop(
                                Step.PRODUCT,
                                "product.lighterThanEmpty",
                                Arg.number(Unit.KG.to(Unit.G, full), 0, Unit.G))
                        .at(AT));
                return null;
            }
            netKg.add(full - tareKg);
        }
        return netKg;
    }

    private @Nullable BulkDensity density(List<Double> netKg, double volumeL) {
        BulkDensity density = BulkDensities.of(netKg, volumeL, SCALE_STEP_KG);
        double mean = density.meanKgPerL();
        Limits possible = MatchPaths.TESTED_BULK_DENSITY.range(read.setup()).possible();
        if (!possible.contain(mean)) {
            findings.add(Finding.stop(
                            Step.PRODUCT,
                            "product.densityImpossible",
                            Arg.number(mean, 2, Unit.KG_PER_L),
                            Arg.number(possible.low(), 1, Unit.KG_PER_L),
                            Arg.number(possible.high(), 1, Unit.KG_PER_L))
                    .at(AT));
            return null;
        }
        if (BulkDensities.differ(density.spreadPercent())) {
            findings.add(Finding.warn(
                            Step.PRODUCT,
                            "product.fillingsDiffer",
                            Arg.number(density.spreadPercent(), 1, Unit.PERCENT),
                            Arg.number(BulkDensities.WIDEST_SPREAD_PERCENT, 0, Unit.PERCENT))
                    .from("source.fillings")
                    .at(AT));
        }
        againstBands(read.get(ProductPaths.FORM), mean);
        return density;
    }

    private void againstBands(ProductForm form, double meanKgPerL) {
        for (PublishedBand band : PublishedBands.of(form)) {
            Limits shown = new Limits(
                    band.range().low() - BAND_ROUNDING_KG_PER_L, band.range().high() + BAND_ROUNDING_KG_PER_L);
            if (band.quantity() == PublishedBand.Quantity.BULK_DENSITY && !shown.contain(meanKgPerL)) {
                findings.add(Finding.note(
                                Step.PRODUCT,
                                "product.densityOutsideBand",
                                Arg.number(meanKgPerL, 2, Unit.KG_PER_L),
                                Arg.number(band.range().low(), 2, Unit.KG_PER_L),
                                Arg.number(band.range().high(), 2, Unit.KG_PER_L))
                        .at(AT)
                        .from(band.sourceKey()));
            }
        }
    }
}
