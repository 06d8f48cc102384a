package org.evenfall.setup;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.Throw;
import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.BulkDensities;
import org.evenfall.granule.BulkDensity;
import org.evenfall.granule.ParticleDensities;
import org.evenfall.granule.ParticleDensity;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.PublishedBand;
import org.evenfall.granule.PublishedBands;
import org.evenfall.granule.Sampling;
import org.evenfall.granule.SieveResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.RankContext;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.YesNo;
import org.jspecify.annotations.Nullable;

/** Step 1: what is in the bag. */
final class ProductAssessor {

    private ProductAssessor() {}

    static ProductResult assess(Setup setup, MachineProfile machine, EntryReader reader) {
        ProductEntries entries = setup.product();
        identity(entries, setup.card().date(), reader);
        Double nitrogen = nitrogen(entries, reader);
        Integer bagsToSample = sampling(entries, reader);
        BulkDensity density = density(entries, reader);
        SieveResult sieve = SieveAssessor.assess(entries, reader);
        ParticleDensity particle = density == null ? null : ParticleDensities.fromBulk(density, entries.form());
        if (particle != null && !particle.plausible()) {
            reader.add(Finding.warn(Step.PRODUCT, "product.packing", Arg.number(particle.packingShare(), 2, Unit.NONE))
                    .at("/product/containerFull")
                    .from("source.packing"));
        }
        Throw flight = particle == null || sieve == null
                ? null
                : ThrowModel.of(
                        sieve.distribution(),
                        particle.kgPerM3(),
                        particle.standardErrorKgPerM3(),
                        machine.discRadiusM() == null ? ThrowModel.USUAL_DISC_RADIUS_M : machine.discRadiusM(),
                        machine.discSpeedAt540Rpm() == null ? ThrowModel.USUAL_DISC_RPM : machine.discSpeedAt540Rpm(),
                        machine.wantedHeightM() == null ? RankContext.USUAL_HEIGHT_M : machine.wantedHeightM());
        return new ProductResult(
                density, sieve, particle, nitrogen, flight, PublishedBands.of(entries.form()), bagsToSample);
    }

    private static void identity(ProductEntries entries, String cardDate, EntryReader reader) {
        reader.need(!entries.name().isBlank(), Step.PRODUCT, "missing.productName", "/product/name");
        reader.need(entries.form() != ProductForm.UNANSWERED, Step.PRODUCT, "missing.form", "/product/form");
        reader.need(entries.treated() != YesNo.UNANSWERED, Step.PRODUCT, "missing.treated", "/product/treated");
        reader.need(
                entries.condition() != Condition.UNANSWERED, Step.PRODUCT, "missing.condition", "/product/condition");
        reader.need(
                entries.nitrateBefore() != YesNo.UNANSWERED,
                Step.PRODUCT,
                "missing.nitrateBefore",
                "/product/nitrateBefore");
        if (entries.condition() == Condition.CAKED) {
            reader.add(Finding.stop(Step.PRODUCT, "product.caked").at("/product/condition"));
        }
        if (entries.condition() == Condition.SLIGHTLY_DAMP) {
            reader.add(Finding.warn(Step.PRODUCT, "product.damp").at("/product/condition"));
        }
        if (entries.blend() == YesNo.YES) {
            reader.add(Finding.warn(Step.PRODUCT, "product.blend").at("/product/blend"));
        }
        if (entries.nitrateBefore() == YesNo.YES && entries.cleanAndDry() != YesNo.YES) {
            reader.add(Finding.stop(Step.PRODUCT, "product.notClean")
                    .at("/product/cleanAndDry")
                    .from("source.humidity"));
        }
        boolean urea = entries.form() == ProductForm.GRANULAR_UREA || entries.form() == ProductForm.PRILLED_UREA;
        if (urea && entries.treated() == YesNo.NO) {
            reader.add(Finding.warn(Step.PRODUCT, "product.untreated").at("/product/treated"));
        }
        if (entries.treated() == YesNo.YES) {
            useBy(entries.useBy(), cardDate, reader);
        }
    }

    private static void useBy(String useBy, String cardDate, EntryReader reader) {
        if (useBy.isBlank()) {
            reader.add(Finding.note(Step.PRODUCT, "product.useByOpen").at("/product/useBy"));
            return;
        }
        LocalDate limit = date(useBy);
        LocalDate today = date(cardDate);
        if (limit == null) {
            reader.add(Finding.stop(Step.PRODUCT, "entry.notADate", Arg.text(useBy))
                    .at("/product/useBy"));
        } else if (today != null && today.isAfter(limit)) {
            reader.add(Finding.warn(Step.PRODUCT, "product.pastUseBy", Arg.text(useBy))
                    .at("/product/useBy"));
        }
    }

    static @Nullable LocalDate date(String iso) {
        try {
            return iso.isBlank() ? null : LocalDate.parse(iso.strip());
        } catch (DateTimeParseException notADate) {
            return null;
        }
    }

    private static @Nullable Double nitrogen(ProductEntries entries, EntryReader reader) {
        Double percent = reader.read(entries.nitrogen(), Fields.NITROGEN_SHARE, "/product/nitrogen");
        reader.need(
                percent != null || !entries.nitrogen().isBlank(),
                Step.PRODUCT,
                "missing.nitrogen",
                "/product/nitrogen");
        boolean urea = entries.form() == ProductForm.GRANULAR_UREA || entries.form() == ProductForm.PRILLED_UREA;
        if (percent != null && urea && (percent < 38 || percent > 46.7)) {
            reader.add(Finding.warn(Step.PRODUCT, "product.nitrogenOfUrea", Arg.number(percent, 1, Unit.PERCENT))
                    .at("/product/nitrogen"));
        }
        return percent;
    }

    private static @Nullable Integer sampling(ProductEntries entries, EntryReader reader) {
        Double delivered = reader.read(entries.bagsDelivered(), Fields.BAGS, "/product/bagsDelivered");
        Double sampled = reader.read(entries.bagsSampled(), Fields.BAGS, "/product/bagsSampled");
        if (delivered == null) {
            return null;
        }
        int wanted = Sampling.bags((int) Math.ceil(delivered));
        if (sampled != null && sampled > delivered) {
            reader.add(Finding.stop(Step.PRODUCT, "product.moreSampledThanDelivered")
                    .at("/product/bagsSampled"));
        } else if (sampled != null && sampled < wanted) {
            reader.add(Finding.note(
                            Step.PRODUCT, "product.fewBags", Arg.count(wanted), Arg.number(delivered, 0, Unit.NONE))
                    .at("/product/bagsSampled"));
        }
        return wanted;
    }

    private static @Nullable BulkDensity density(ProductEntries entries, EntryReader reader) {
        Double volumeL = reader.read(entries.containerVolume(), Fields.CONTAINER_VOLUME, "/product/containerVolume");
        Double emptyG = reader.read(entries.containerEmpty(), Fields.CONTAINER_EMPTY, "/product/containerEmpty");
        List<Double> fullG = reader.readAll(entries.containerFull(), Fields.CONTAINER_FULL, "/product/containerFull");
        reader.need(volumeL != null, Step.PRODUCT, "missing.containerVolume", "/product/containerVolume");
        reader.need(
                fullG.size() >= BulkDensities.FEWEST_FILLINGS,
                Step.PRODUCT,
                "missing.fillings",
                "/product/containerFull");
        if (volumeL == null || fullG.isEmpty()) {
            return null;
        }
        double empty = emptyG == null ? 0 : emptyG;
        if (emptyG == null && entries.containerEmpty().isBlank()) {
            reader.add(Finding.note(Step.PRODUCT, "product.noTare").at("/product/containerEmpty"));
        }
        List<Double> netKg = new ArrayList<>();
        for (double full : fullG) {
            if (full <= empty) {
                reader.add(Finding.stop(Step.PRODUCT, "product.lighterThanEmpty", Arg.number(full, 0, Unit.G))
                        .at("/product/containerFull"));
                return null;
            }
            netKg.add((full - empty) / 1000);
        }
        BulkDensity density = BulkDensities.of(netKg, volumeL, 0.001);
        double mean = density.meanKgPerL();
        if (mean < Fields.BULK_DENSITY.low() || mean > Fields.BULK_DENSITY.high()) {
            reader.add(Finding.stop(
                            Step.PRODUCT,
                            "product.densityImpossible",
                            Arg.number(mean, 2, Unit.KG_PER_L),
                            Arg.number(Fields.BULK_DENSITY.low(), 1, Unit.KG_PER_L),
                            Arg.number(Fields.BULK_DENSITY.high(), 1, Unit.KG_PER_L))
                    .at("/product/containerFull"));
            return null;
        }
        if (density.spreadPercent() > BulkDensities.WIDEST_SPREAD_PERCENT) {
            reader.add(Finding.warn(
                            Step.PRODUCT,
                            "product.fillingsDiffer",
                            Arg.number(density.spreadPercent(), 1, Unit.PERCENT),
                            Arg.number(BulkDensities.WIDEST_SPREAD_PERCENT, 0, Unit.PERCENT))
                    .at("/product/containerFull"));
        }
        against(entries.form(), mean, reader);
        return density;
    }

    private static void against(ProductForm form, double meanKgPerL, EntryReader reader) {
        for (PublishedBand band : PublishedBands.of(form)) {
            if (band.quantity() == PublishedBand.Quantity.BULK_DENSITY
                    && (meanKgPerL < band.range().low() - 0.005
                            || meanKgPerL > band.range().high() + 0.005)) {
                reader.add(Finding.note(
                                Step.PRODUCT,
                                "product.densityOutsideBand",
                                Arg.number(meanKgPerL, 2, Unit.KG_PER_L),
                                Arg.number(band.range().low(), 2, Unit.KG_PER_L),
                                Arg.number(band.range().high(), 2, Unit.KG_PER_L))
                        .at("/product/containerFull")
                        .from(band.sourceKey()));
            }
        }
    }

    /** All entries of one list read in one unit, or as typed. */
    static boolean anyTyped(List<EnteredQuantity> typed) {
        return typed.stream().anyMatch(one -> !one.isBlank());
    }
}
