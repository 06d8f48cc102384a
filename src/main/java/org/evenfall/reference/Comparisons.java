package org.evenfall.reference;

import java.util.Comparator;
import java.util.List;
import org.evenfall.flight.ThrowModel;
import org.jspecify.annotations.Nullable;

/**
 * The new product on this machine, ready to be compared with references.
 *
 * @param candidate the new product as measured
 * @param context machine and field
 * @param speedMPerS outlet speed, m/s
 * @param alone its properties with gaps filled without a reference
 * @param aloneLine its throw with these
 */
record Comparisons(
        Candidate candidate, RankContext context, double speedMPerS, EstimatedProperties alone, ThrowLine aloneLine) {

    /** The new product alone. */
    static Comparisons of(Candidate candidate, RankContext context) {
        double speed = ThrowModel.outletSpeedMPerS(context.discRadiusM(), context.discRpm());
        EstimatedProperties alone = estimate(candidate, null);
        return new Comparisons(candidate, context, speed, alone, ThrowLine.of(alone, speed, context.heightOverCropM()));
    }

    /** References of the tramline width before all others; within each group the smallest score first, then by id. */
    List<Comparison> nearestFirst(List<TestedProduct> references) {
        return references.stream()
                .map(this::compare)
                .sorted(Comparator.comparing((Comparison comparison) -> !sameWidth(comparison))
                        .thenComparingDouble(Comparison::score)
                        .thenComparing(comparison -> comparison.reference.id()))
                .toList();
    }

    /** Those that compete for the first place: of the tramline width, or all where there is none of that width. */
    List<Comparison> competing(List<Comparison> nearestFirst) {
        List<Comparison> sameWidth =
                nearestFirst.stream().filter(this::sameWidth).toList();
        return sameWidth.isEmpty() ? nearestFirst : sameWidth;
    }

    /** Whether a reference was tested at the tramline width. */
    boolean sameWidth(Comparison comparison) {
        return Verdicts.sameWidth(comparison.reference.widthM(), context.tramlineWidthM());
    }

    /** The throw of a product on this machine. */
    ThrowLine line(EstimatedProperties product) {
        return product.equals(alone) ? aloneLine : ThrowLine.of(product, speedMPerS, context.heightOverCropM());
    }

    /** The landing model set for a product at the tramline width. */
    ReferencePatternModel modelFor(EstimatedProperties product) {
        return ReferencePatternModel.best(product, speedMPerS, context.heightOverCropM(), context.tramlineWidthM());
    }

    private Comparison compare(TestedProduct reference) {
        EstimatedProperties product = estimate(candidate, reference);
        EstimatedProperties other = EstimatedProperties.of(
                reference.form(),
                reference.bulkDensityKgPerL(),
                EstimatedProperties.HANDBOOK_BULK_ERROR,
                reference.sizes(),
                product.bulkKgPerL(),
                candidate.sizes());
        return new Comparison(candidate.form(), reference, product, other, line(product), line(other));
    }

    private static EstimatedProperties estimate(Candidate candidate, @Nullable TestedProduct reference) {
        Double bulk = candidate.bulkDensityKgPerL();
        return EstimatedProperties.of(
                candidate.form(),
                bulk,
                bulk == null ? 0 : candidate.bulkDensitySe() / bulk,
                candidate.sizes(),
                reference == null ? null : reference.bulkDensityKgPerL(),
                reference == null ? null : reference.sizes());
    }
}
