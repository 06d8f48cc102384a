package org.evenfall.reference;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.quantity.Interval;
import org.jspecify.annotations.Nullable;

/**
 * Which tested product would land most like the new one. References of this tramline width come before all others,
 * because only their settings can be taken over; among them the greatest chance of landing closest comes first.
 */
public final class ProductRanking {

    /**
     * Number of closest references of this width whose pattern is predicted. Assumption: nobody reads further, and each
     * takes about a millisecond.
     */
    public static final int PATTERNS = 12;

    /** Largest error of ln density by which a pattern is varied. Assumption: the landing model holds no further. */
    static final double LARGEST_LN_DENSITY_ERROR = 0.5;

    private ProductRanking() {}

    /** Ranks the references without a monitor; see the other method. */
    public static MatchResult rank(
            Candidate candidate, List<TestedProduct> references, RankContext context, long seed, int redraws) {
        return rank(candidate, references, context, seed, redraws, ProgressMonitor.NONE);
    }

    /**
     * Ranks the references.
     *
     * @param candidate the new product; with nothing measured of it nothing is ranked
     * @param references the library, may be empty
     * @param context machine and field
     * @param seed seed of the simulation that repeats the measurements
     * @param redraws how often they are repeated, at least 1
     * @param monitor follows the simulation; where it ends it, what was drawn so far counts
     * @throws IllegalArgumentException when redraws is below 1
     */
    public static MatchResult rank(
            Candidate candidate,
            List<TestedProduct> references,
            RankContext context,
            long seed,
            int redraws,
            ProgressMonitor monitor) {
        if (redraws < 1) {
            throw new IllegalArgumentException("redraws must be at least 1: " + redraws);
        }
        if (!candidate.measured()) {
            return MatchResult.NOTHING_MEASURED;
        }
        Comparisons product = Comparisons.of(candidate, context);
        ReferenceOrder order = ReferenceOrder.of(product, product.with(references), seed, redraws, monitor);
        double resetCvPercent = product.modelFor(product.alone()).cvPercent();
        List<RankedProduct> ranked = new ArrayList<>();
        for (ReferenceOrder.Place place : order.places()) {
            Comparison comparison = place.comparison();
            boolean predicted = product.sameWidth(comparison)
                    && (ranked.size() < PATTERNS || comparison.reference.id().equals(context.chosenId()));
            ranked.add(ranked(
                    place,
                    product.sameWidth(comparison),
                    predicted ? pattern(comparison, product, resetCvPercent) : null));
        }
        return result(product, order, ranked, resetCvPercent);
    }

    private static MatchResult result(
            Comparisons product, ReferenceOrder order, List<RankedProduct> ranked, double resetCvPercent) {
        int index = chosen(ranked, product.context());
        RankedProduct chosen = index < 0 ? null : ranked.get(index);
        Comparison comparison = chosen == null || !chosen.sameWidth()
                ? null
                : order.places().get(index).comparison();
        Comparison dense = product.withDense();
        Reach.Answer reach = Reach.widest(
                product.context(),
                order.comparisons(),
                product.alone(),
                product.aloneThrow().edge());
        Verdict verdict = chosen == null ? Verdict.NO_REFERENCE : chosen.verdict();
        // without a reference the start is the setting for a dense product, and the throw against it gives the
        // direction
        Direction againstDense = Verdicts.direction(dense.throwPercent());
        Comparison start = order.comparisons().stream()
                .filter(each -> each.reference.id().equals(TestedProduct.TODAY_ID))
                .findFirst()
                .orElse(dense);
        return new MatchResult(
                ranked,
                chosen,
                reach.reachability() == Reachability.PROBABLY_NOT ? Verdict.NOT_AT_THIS_WIDTH : verdict,
                chosen == null ? againstDense : chosen.direction(),
                takesOver(ranked, product.context())
                        ? null
                        : product.modelFor(start.other).turnDeg(start.product),
                againstDense,
                dense.throwM(),
                dense.throwIntervalM(),
                reach.widestM(),
                reach.reachability(),
                chosen != null && chosen.pattern() != null ? chosen.pattern() : pattern(dense, product, resetCvPercent),
                overlay(product, comparison),
                order.redraws());
    }

    /** Whether the settings of a reference that the person chose can be taken over, so that nobody needs a first guess. */
    private static boolean takesOver(List<RankedProduct> ranked, RankContext context) {
        return !context.chosenId().equals(TestedProduct.TODAY_ID)
                && ranked.stream().anyMatch(each -> each.id().equals(context.chosenId()));
    }

    /** Index of the reference that the person chose, else of the closest; −1 without any. */
    private static int chosen(List<RankedProduct> ranked, RankContext context) {
        for (int i = 0; i < ranked.size(); i++) {
            if (ranked.get(i).id().equals(context.chosenId())) {
                return i;
            }
        }
        return ranked.isEmpty() ? -1 : 0;
    }

    /** What becomes of the pattern with the settings of another product; the throw is off by its 90 % interval. */
    private static PatternChange pattern(Comparison comparison, Comparisons product, double resetCvPercent) {
        Interval throwM = comparison.throwIntervalM();
        double perLnDensity = comparison.productThrow.edge().perLnDensity();
        return product.modelFor(comparison.other)
                .change(
                        comparison.product,
                        resetCvPercent,
                        new Interval(
                                lnDensity(throwM.low() - comparison.throwM(), perLnDensity),
                                lnDensity(throwM.high() - comparison.throwM(), perLnDensity)));
    }

    private static double lnDensity(double shiftM, double perLnDensity) {
        return Math.max(-LARGEST_LN_DENSITY_ERROR, Math.min(LARGEST_LN_DENSITY_ERROR, shiftM / perLnDensity));
    }

    private static PatternOverlay overlay(Comparisons product, @Nullable Comparison comparison) {
        return comparison == null
                ? product.modelFor(Reach.dense()).overlay("", "", product.alone(), Reach.dense())
                : product.modelFor(comparison.other)
                        .overlay(
                                comparison.reference.id(),
                                comparison.reference.name(),
                                comparison.product,
                                comparison.other);
    }

    private static RankedProduct ranked(
            ReferenceOrder.Place place, boolean sameWidth, @Nullable PatternChange pattern) {
        Comparison comparison = place.comparison();
        TestedProduct reference = comparison.reference;
        EstimatedProperties product = comparison.product;
        EstimatedProperties other = comparison.other;
        boolean densities = product.bulkKnown() && other.bulkKnown();
        boolean sizes = product.sizeKnown() && other.sizeKnown();
        boolean spreads = product.spreadKnown() && other.spreadKnown();
        double flowPercent = 100 * Math.expm1(comparison.lnFlow());
        Interval throwM = comparison.throwIntervalM();
        return new RankedProduct(
                reference.id(),
                reference.name(),
                reference.widthM(),
                new RankedProduct.Properties(
                        other.bulkKnown() ? other.bulkKgPerL() : null,
                        other.sizeKnown() ? other.d50Mm() : null,
                        other.spreadKnown() ? other.spreadIndexPercent() : null),
                reference.testedCvPercent(),
                new RankedProduct.Difference(
                        densities ? 100 * (product.bulkKgPerL() / other.bulkKgPerL() - 1) : null,
                        sizes ? 100 * (product.d50Mm() / other.d50Mm() - 1) : null,
                        spreads ? comparison.spreadPoints() : null,
                        densities ? flowPercent : null),
                new RankedProduct.ThrowDifference(comparison.throwM(), throwM, comparison.throwPercent()),
                Math.abs(comparison.throwM()) / comparison.throwErrorM(),
                place.distanceM(),
                place.chance(),
                sameWidth,
                Verdicts.of(
                        sameWidth,
                        densities && sizes && spreads,
                        comparison.throwPercent(),
                        comparison.farthestPercent(),
                        flowPercent,
                        comparison.spreadPoints()),
                Verdicts.direction(comparison.throwPercent()),
                pattern);
    }
}
