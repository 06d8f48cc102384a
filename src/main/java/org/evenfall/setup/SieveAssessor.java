package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.Sieves;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.ProductEntries;
import org.jspecify.annotations.Nullable;

/** The sieve box, for the product and for a reference that was typed in. */
final class SieveAssessor {

    /** Percent typed may miss 100 by this. */
    private static final double PERCENT_SLACK = 2.5;

    private SieveAssessor() {}

    static @Nullable SieveResult assess(ProductEntries entries, EntryReader reader) {
        List<Double> apertures = apertures(entries.apertures(), "/product/apertures", Step.PRODUCT, reader);
        boolean anything = entries.sievings().stream().anyMatch(one -> ProductAssessor.anyTyped(one.amounts()));
        if (apertures == null || !anything) {
            reader.need(anything && apertures != null, Step.PRODUCT, "missing.sieve", "/product/sievings");
            return null;
        }
        FieldSpec spec = spec(entries.sieveAmounts());
        List<List<Double>> samples = new ArrayList<>();
        for (int i = 0; i < entries.sievings().size(); i++) {
            List<Double> sample = sample(
                    entries.sievings().get(i).amounts(),
                    apertures.size() + 1,
                    spec,
                    "/product/sievings/" + i + "/amounts",
                    Step.PRODUCT,
                    reader);
            if (sample != null) {
                samples.add(sample);
            }
        }
        if (samples.isEmpty()) {
            return null;
        }
        SieveResult result = Sieves.analyse(apertures, samples);
        tell(result, reader);
        return result;
    }

    private static void tell(SieveResult result, EntryReader reader) {
        if (result.distribution().spreadIsBound()) {
            reader.add(Finding.note(Step.PRODUCT, "product.spreadIsBound").at("/product/sievings"));
        }
        if (result.worstResidualPercent() > 6) {
            reader.add(Finding.warn(
                            Step.PRODUCT, "product.notOneHump", Arg.number(result.worstResidualPercent(), 0, Unit.NONE))
                    .at("/product/sievings"));
        }
        if (result.shareUnder2MmPercent() > 10) {
            reader.add(Finding.warn(
                            Step.PRODUCT, "product.fines", Arg.number(result.shareUnder2MmPercent(), 0, Unit.PERCENT))
                    .at("/product/sievings")
                    .from("source.ureaSize"));
        }
        if (result.samples() == 1) {
            reader.add(Finding.note(Step.PRODUCT, "product.oneSample").at("/product/sievings"));
        }
    }

    private static FieldSpec spec(AmountKind kind) {
        return switch (kind) {
            case MASS -> Fields.SIEVE_MASS;
            case HEIGHT -> Fields.SIEVE_HEIGHT;
            case PERCENT, VOLUME, UNANSWERED -> Fields.SIEVE_SHARE;
        };
    }

    /** Apertures in mm, rising; null with a finding when they cannot be used, null without one when there are none. */
    static @Nullable List<Double> apertures(
            List<EnteredQuantity> typed, String pointer, Step step, EntryReader reader) {
        if (!ProductAssessor.anyTyped(typed)) {
            return null;
        }
        List<Double> apertures = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            Double aperture = reader.read(typed.get(i), Fields.APERTURE, pointer + "/" + i, step);
            if (aperture == null) {
                if (typed.get(i).isBlank()) {
                    reader.add(Finding.warn(step, "product.apertureBlank", Arg.count(i + 1L))
                            .at(pointer + "/" + i));
                }
                return null;
            }
            if (!apertures.isEmpty() && aperture <= apertures.get(apertures.size() - 1)) {
                reader.add(Finding.stop(step, "product.aperturesOrder").at(pointer));
                return null;
            }
            apertures.add(aperture);
        }
        if (apertures.size() < 2 || apertures.size() > 8) {
            reader.add(Finding.stop(step, "product.aperturesCount", Arg.count(apertures.size()))
                    .at(pointer));
            return null;
        }
        return apertures;
    }

    /** Amounts of one sample, finest first; null when it is blank or, with a finding, when it cannot be used. */
    static @Nullable List<Double> sample(
            List<EnteredQuantity> typed, int classes, FieldSpec spec, String pointer, Step step, EntryReader reader) {
        if (!ProductAssessor.anyTyped(typed)) {
            return null;
        }
        if (typed.size() < classes) {
            reader.add(Finding.note(step, "product.classOpen").at(pointer + "/" + typed.size()));
            return null;
        }
        if (typed.size() > classes) {
            reader.add(Finding.stop(step, "product.classCount", Arg.count(classes), Arg.count(typed.size()))
                    .at(pointer));
            return null;
        }
        List<Double> amounts = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            if (typed.get(i).isBlank()) {
                reader.add(Finding.note(step, "product.classOpen").at(pointer + "/" + i));
                return null;
            }
            Double amount = reader.read(typed.get(i), spec, pointer + "/" + i, step);
            if (amount == null) {
                return null;
            }
            amounts.add(amount);
        }
        double sum = amounts.stream().mapToDouble(Double::doubleValue).sum();
        if (sum <= 0) {
            reader.add(Finding.stop(step, "product.nothingSieved").at(pointer));
            return null;
        }
        if (spec.equals(Fields.SIEVE_SHARE) && Math.abs(sum - 100) > PERCENT_SLACK) {
            reader.add(Finding.warn(step, "product.notHundred", Arg.number(sum, 1, Unit.PERCENT))
                    .at(pointer));
        }
        return amounts;
    }
}
