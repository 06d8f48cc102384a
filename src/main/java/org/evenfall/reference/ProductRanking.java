package org.evenfall.reference;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.NinetyPercent;
import org.jspecify.annotations.Nullable;

/**
 * Which tested product would land most like the new one. References of this tramline width come before all others,
 * because only their settings can be taken over; within each group the smallest standardised difference comes first.
 */
public final class ProductRanking {

    /**
     * Number of nearest references of this width whose pattern is predicted. Assumption: nobody reads further, and each
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
        List<Comparison> comparisons = product.nearestFirst(references);
        ClosestShares closest = ClosestShares.simulate(product.competing(comparisons), seed, redraws, monitor);
        double resetCvPercent = product.modelFor(product.alone()).cvPercent();
        List<RankedProduct> ranked = new ArrayList<>();
        for (int i = 0; i < comparisons.size(); i++) {
            Comparison comparison = comparisons.get(i);
            boolean predicted = product.sameWidth(comparison)
                    && (i < PATTERNS || comparison.reference.id().equals(context.chosenId()));
            ranked.add(ranked(
                    comparison,
                    product.sameWidth(comparison),
                    i < closest.shares().size() ? closest.shares().get(i) : 0,
                    predicted ? pattern(comparison, product, resetCvPercent) : null));
        }
        return result(product, comparisons, ranked, resetCvPercent, closest.redraws());
    }

    private static MatchResult result(
            Comparisons product,
            List<Comparison> comparisons,
            List<RankedProduct> ranked,
            double resetCvPercent,
            int redraws) {
        int index = chosen(ranked, product.context());
        RankedProduct chosen = index < 0 ? null : ranked.get(index);
        Comparison comparison = chosen == null || !chosen.sameWidth() ? null : comparisons.get(index);
        double edgeM = product.aloneLine().edgeM();
        double againstDenseM = edgeM - product.line(Reach.dense()).edgeM();
        Reach.Answer reach = Reach.widest(product.context(), comparisons, product.alone(), product.aloneLine());
        Verdict verdict = chosen == null ? Verdict.NO_REFERENCE : chosen.verdict();
        // without a reference the start is the setting for a dense product, and the throw against it gives the
        // direction
        Direction direction =
                chosen == null ? Verdicts.direction(100 * againstDenseM / (edgeM - againstDenseM)) : chosen.direction();
        return new MatchResult(
                ranked,
                chosen,
                reach.outOfReach() ? Verdict.NOT_AT_THIS_WIDTH : verdict,
                direction,
                againstDenseM,
                reach.widestM(),
                reach.outOfReach(),
                chosen != null && chosen.pattern() != null ? chosen.pattern() : againstDense(product, resetCvPercent),
                overlay(product, comparison),
                redraws);
    }

    /** Index of the reference that the person chose, else of the nearest; −1 without any. */
    private static int chosen(List<RankedProduct> ranked, RankContext context) {
        for (int i = 0; i < ranked.size(); i++) {
            if (ranked.get(i).id().equals(context.chosenId())) {
                return i;
            }
        }
        return ranked.isEmpty() ? -1 : 0;
    }

    /** What becomes of the pattern with the settings of a reference; the throw is off by its 90 % error. */
    private static PatternChange pattern(Comparison comparison, Comparisons product, double resetCvPercent) {
        double lnDensityError = NinetyPercent.Z * comparison.throwErrorM() / comparison.productLine.perLnDensity();
        return product.modelFor(comparison.other)
                .change(comparison.product, resetCvPercent, Math.min(LARGEST_LN_DENSITY_ERROR, lnDensityError));
    }

    private static PatternChange againstDense(Comparisons product, double resetCvPercent) {
        return product.modelFor(Reach.dense())
                .change(
                        product.alone(),
                        resetCvPercent,
                        NinetyPercent.Z * product.alone().bulkError());
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
            Comparison comparison, boolean sameWidth, double closestShare, @Nullable PatternChange pattern) {
        TestedProduct reference = comparison.reference;
        EstimatedProperties product = comparison.product;
        EstimatedProperties other = comparison.other;
        boolean densities = product.bulkKnown() && other.bulkKnown();
        boolean sizes = product.sizeKnown() && other.sizeKnown();
        boolean spreads = product.spreadKnown() && other.spreadKnown();
        double flowPercent = 100 * Math.expm1(comparison.lnFlow());
        Interval throwM = NinetyPercent.of(comparison.throwM(), comparison.throwErrorM());
        return new RankedProduct(
                reference.id(),
                reference.name(),
                reference.widthM(),
                new RankedProduct.Properties(
                        other.bulkKnown() ? other.bulkKgPerL() : null,
                        other.sizeKnown() ? other.d50Mm() : null,
                        other.spreadKnown() ? other.spreadIndexPercent() : null),
                new RankedProduct.Difference(
                        densities ? 100 * (product.bulkKgPerL() / other.bulkKgPerL() - 1) : null,
                        sizes ? 100 * (product.d50Mm() / other.d50Mm() - 1) : null,
                        spreads ? comparison.spreadPoints() : null,
                        densities ? flowPercent : null),
                new RankedProduct.ThrowDifference(comparison.throwM(), throwM, comparison.throwPercent()),
                comparison.score(),
                closestShare,
                sameWidth,
                Verdicts.of(
                        sameWidth,
                        densities && sizes && spreads,
                        comparison.throwPercent(),
                        100 * throwM.width() / 2 / comparison.otherLine.edgeM(),
                        flowPercent,
                        comparison.spreadPoints()),
                Verdicts.direction(comparison.throwPercent()),
                pattern);
    }
}
