package org.evenfall.reference;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.flight.ThrowModel;
import org.jspecify.annotations.Nullable;

/**
 * The new product on this machine, ready to be compared with references.
 *
 * @param candidate the new product as measured
 * @param context machine and field
 * @param speedMPerS outlet speed, m/s
 * @param alone its properties with gaps filled with usual figures
 * @param aloneThrow its throw with these
 * @param models the landing models set so far, each for its product
 */
record Comparisons(
        Candidate candidate,
        RankContext context,
        double speedMPerS,
        EstimatedProperties alone,
        ProductThrow aloneThrow,
        Map<EstimatedProperties, ReferencePatternModel> models) {

    /** The new product alone. */
    static Comparisons of(Candidate candidate, RankContext context) {
        double speed = ThrowModel.outletSpeedMPerS(context.discRadiusM(), context.discRpm());
        EstimatedProperties alone = estimate(candidate, null);
        return new Comparisons(
                candidate,
                context,
                speed,
                alone,
                ProductThrow.of(alone, speed, context.heightOverCropM()),
                new HashMap<>());
    }

    /** The new product compared with each reference, in their order. */
    List<Comparison> with(List<TestedProduct> references) {
        return references.stream().map(this::compare).toList();
    }

    /** The new product compared with a dense 27 % N product. */
    Comparison withDense() {
        EstimatedProperties dense = Reach.dense();
        ProductThrow denseThrow = throwOf(dense);
        return new Comparison(
                new TestedProduct("", "", dense.form(), context.tramlineWidthM(), dense.bulkKgPerL(), null),
                alone,
                dense,
                aloneThrow,
                denseThrow,
                new LandingEstimate(dense, denseThrow));
    }

    /** Where the new product lands. */
    LandingEstimate landing() {
        return new LandingEstimate(alone, aloneThrow);
    }

    private LandingEstimate landing(TestedProduct reference) {
        EstimatedProperties properties = EstimatedProperties.of(
                reference.form(),
                reference.bulkDensityKgPerL(),
                EstimatedProperties.HANDBOOK_BULK_ERROR,
                reference.sizes(),
                null,
                null);
        return new LandingEstimate(properties, throwOf(properties));
    }

    /** Whether a reference was tested at the tramline width. */
    boolean sameWidth(Comparison comparison) {
        return Verdicts.sameWidth(comparison.reference.widthM(), context.tramlineWidthM());
    }

    /** The throw of a product on this machine. */
    ProductThrow throwOf(EstimatedProperties product) {
        return product.equals(alone) ? aloneThrow : ProductThrow.of(product, speedMPerS, context.heightOverCropM());
    }

    /** The landing model set for a product at the tramline width; computed once for each product. */
    ReferencePatternModel modelFor(EstimatedProperties product) {
        return models.computeIfAbsent(
                product,
                each -> ReferencePatternModel.best(
                        each, speedMPerS, context.heightOverCropM(), context.tramlineWidthM()));
    }

    /** A gap is filled from the other product where the two may be of one form, else with what is usual for its own. */
    private Comparison compare(TestedProduct reference) {
        boolean alike = SameProduct.maybeSameForm(candidate.form(), reference.form());
        EstimatedProperties product = alike ? estimate(candidate, reference) : alone;
        EstimatedProperties other = EstimatedProperties.of(
                reference.form(),
                reference.bulkDensityKgPerL(),
                EstimatedProperties.HANDBOOK_BULK_ERROR,
                reference.sizes(),
                alike ? candidate.bulkDensityKgPerL() : null,
                alike ? candidate.sizes() : null);
        LandingEstimate landing = landing(reference);
        ProductThrow otherThrow = other.equals(landing.properties()) ? landing.at() : throwOf(other);
        return new Comparison(reference, product, other, throwOf(product), otherThrow, landing);
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
