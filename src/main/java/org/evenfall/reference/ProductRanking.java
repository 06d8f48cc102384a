package org.evenfall.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.evenfall.flight.ThrowModel;
import org.jspecify.annotations.Nullable;

/**
 * Which tested product would land most like the new one. References of this tramline width stand before all others,
 * because only their settings can be taken over; within each group the least standardised difference comes first.
 */
public final class ProductRanking {

    /** So many of the nearest references of this width get their pattern predicted. Ours: it takes a millisecond each. */
    public static final int PATTERNS = 12;

    private static final double Z90 = 1.6449;

    private static final int LOOK_EVERY = 256;

    private ProductRanking() {}

    /** As below, with nobody looking on. */
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
     * @param seed seed of the simulation that redoes the measurements
     * @param redraws how often they are redone, at least 1
     * @param watch told now and then how far the simulation is; where it ends it, what was drawn so far counts
     */
    public static MatchResult rank(
            Candidate candidate,
            List<TestedProduct> references,
            RankContext context,
            long seed,
            int redraws,
            ProgressMonitor watch) {
        if (redraws < 1) {
            throw new IllegalArgumentException("redraws must be at least 1: " + redraws);
        }
        if (!candidate.measured()) {
            return new MatchResult(
                    List.of(), null, Verdict.NO_REFERENCE, Direction.AS_IT_IS, null, null, false, null, null, 0);
        }
        double speed = ThrowModel.outletSpeedMPerS(context.discRadiusM(), context.discRpm());
        EstimatedProperties alone = traits(candidate, null);
        ThrowLine aloneLine = ThrowLine.of(alone, speed, context.heightOverCropM());
        List<Comparison> comparisons = new ArrayList<>();
        for (TestedProduct reference : references) {
            comparisons.add(compare(candidate, reference, alone, aloneLine, speed, context.heightOverCropM()));
        }
        comparisons.sort(Comparator.comparing((Comparison c) -> !sameWidth(c, context))
                .thenComparingDouble(Comparison::score)
                .thenComparing(c -> c.reference.id()));
        double[] closest = new double[comparisons.size()];
        int redone = closestShares(comparisons, context, seed, redraws, watch, closest);
        ReferencePatternModel own = settings(alone, speed, context);
        List<RankedProduct> ranked = new ArrayList<>();
        for (int i = 0; i < comparisons.size(); i++) {
            Comparison comparison = comparisons.get(i);
            boolean predicted = sameWidth(comparison, context)
                    && (i < PATTERNS || comparison.reference.id().equals(context.chosenId()));
            PatternChange pattern = predicted
                    ? settings(comparison.other, speed, context)
                            .change(comparison.product, own.cvPercent(), throwError(comparison))
                    : null;
            ranked.add(rank(comparison, context, closest[i], pattern));
        }
        double againstDense = aloneLine.edgeM()
                - ThrowLine.of(Reach.dense(), speed, context.heightOverCropM()).edgeM();
        Reach.Answer widest = Reach.widest(context, comparisons, alone, aloneLine);
        RankedProduct chosen = chosen(ranked, context);
        Comparison against = chosen == null || !chosen.sameWidth()
                ? null
                : comparisons.stream()
                        .filter(c -> c.reference.id().equals(chosen.id()))
                        .findFirst()
                        .orElse(null);
        EstimatedProperties other = against == null ? Reach.dense() : against.other;
        EstimatedProperties product = against == null ? alone : against.product;
        ReferencePatternModel kept = settings(other, speed, context);
        PatternChange change = chosen != null && chosen.pattern() != null
                ? chosen.pattern()
                : kept.change(product, own.cvPercent(), Z90 * alone.bulkError());
        PatternOverlay laidOver = against == null
                ? kept.laidOver("", "", product, other)
                : kept.laidOver(against.reference.id(), against.reference.name(), product, other);
        return result(ranked, context, againstDense, aloneLine.edgeM(), widest, change, laidOver, redone);
    }

    private static ReferencePatternModel settings(EstimatedProperties product, double speedMPerS, RankContext context) {
        return ReferencePatternModel.best(product, speedMPerS, context.heightOverCropM(), context.tramlineWidthM());
    }

    /** How far the density would have to be off to put the throw off by its 90 % error, natural logarithm. */
    private static double throwError(Comparison comparison) {
        return Math.min(0.5, Z90 * comparison.throwErrorM() / comparison.productLine.perLnDensity());
    }

    private static @Nullable RankedProduct chosen(List<RankedProduct> ranked, RankContext context) {
        return ranked.stream()
                .filter(reference -> reference.id().equals(context.chosenId()))
                .findFirst()
                .orElse(ranked.isEmpty() ? null : ranked.get(0));
    }

    private static MatchResult result(
            List<RankedProduct> ranked,
            RankContext context,
            double againstDenseM,
            double edgeM,
            Reach.Answer widest,
            PatternChange change,
            PatternOverlay laidOver,
            int redone) {
        RankedProduct chosen = chosen(ranked, context);
        Verdict verdict = chosen == null ? Verdict.NO_REFERENCE : chosen.verdict();
        // with no reference the start is the setting for a dense product, and the throw against it gives the way
        Direction direction =
                chosen == null ? Verdicts.direction(100 * againstDenseM / (edgeM - againstDenseM)) : chosen.direction();
        return new MatchResult(
                ranked,
                chosen,
                widest.outOfReach() ? Verdict.NOT_AT_THIS_WIDTH : verdict,
                direction,
                againstDenseM,
                widest.widestM(),
                widest.outOfReach(),
                change,
                laidOver,
                redone);
    }

    private static Comparison compare(
            Candidate candidate,
            TestedProduct reference,
            EstimatedProperties alone,
            ThrowLine aloneLine,
            double speedMPerS,
            double heightM) {
        EstimatedProperties product = traits(candidate, reference);
        ThrowLine line = product.equals(alone) ? aloneLine : ThrowLine.of(product, speedMPerS, heightM);
        EstimatedProperties other = EstimatedProperties.of(
                reference.form(),
                reference.bulkDensityKgPerL(),
                EstimatedProperties.HANDBOOK_BULK_ERROR,
                reference.sizes(),
                product.bulkKgPerL(),
                candidate.sizes());
        ThrowLine otherLine = ThrowLine.of(other, speedMPerS, heightM);
        return new Comparison(candidate.form(), reference, product, other, line, otherLine);
    }

    private static EstimatedProperties traits(Candidate candidate, @Nullable TestedProduct reference) {
        Double bulk = candidate.bulkDensityKgPerL();
        return EstimatedProperties.of(
                candidate.form(),
                bulk,
                bulk == null ? 0 : candidate.bulkDensitySe() / bulk,
                candidate.sizes(),
                reference == null ? null : reference.bulkDensityKgPerL(),
                reference == null ? null : reference.sizes());
    }

    private static boolean sameWidth(Comparison comparison, RankContext context) {
        return Verdicts.sameWidth(comparison.reference.widthM(), context.tramlineWidthM());
    }

    /** How often each would rank first; where any was tested at this width, only those compete. */
    private static int closestShares(
            List<Comparison> comparisons,
            RankContext context,
            long seed,
            int redraws,
            ProgressMonitor watch,
            double[] firsts) {
        if (comparisons.isEmpty()) {
            return 0;
        }
        int competing =
                (int) comparisons.stream().filter(c -> sameWidth(c, context)).count();
        competing = competing == 0 ? comparisons.size() : competing;
        NormalizedGaussianSampler gauss =
                ZigguratSampler.NormalizedGaussian.of(RandomSource.XO_RO_SHI_RO_128_PP.create(seed));
        double[] own = new double[3];
        double[] theirs = new double[3];
        int drawn = 0;
        while (drawn < redraws
                && (drawn % LOOK_EVERY != 0 || watch.shouldContinue(drawn / (double) redraws) || drawn == 0)) {
            drawn++;
            fill(own, gauss);
            int best = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < competing; i++) {
                fill(theirs, gauss);
                double score = comparisons.get(i).squaredScore(own, theirs, gauss.sample());
                if (score < least) {
                    least = score;
                    best = i;
                }
            }
            firsts[best]++;
        }
        for (int i = 0; i < firsts.length; i++) {
            firsts[i] /= drawn;
        }
        return drawn;
    }

    private static void fill(double[] numbers, NormalizedGaussianSampler gauss) {
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = gauss.sample();
        }
    }

    private static RankedProduct rank(
            Comparison comparison, RankContext context, double closestShare, @Nullable PatternChange pattern) {
        TestedProduct reference = comparison.reference;
        EstimatedProperties product = comparison.product;
        EstimatedProperties other = comparison.other;
        boolean densities = product.bulkKnown() && other.bulkKnown();
        boolean sizes = product.sizeKnown() && other.sizeKnown();
        boolean spreads = product.spreadKnown() && other.spreadKnown();
        double flowPercent = 100 * Math.expm1(comparison.lnFlow());
        double half = Z90 * comparison.throwErrorM();
        boolean sameWidth = sameWidth(comparison, context);
        return new RankedProduct(
                reference.id(),
                reference.name(),
                reference.widthM(),
                comparison.score(),
                densities ? 100 * (product.bulkKgPerL() / other.bulkKgPerL() - 1) : null,
                sizes ? 100 * (product.d50Mm() / other.d50Mm() - 1) : null,
                spreads ? comparison.spreadPoints() : null,
                densities ? flowPercent : null,
                comparison.throwM(),
                comparison.throwM() - half,
                comparison.throwM() + half,
                comparison.throwPercent(),
                closestShare,
                sameWidth,
                Verdicts.of(
                        sameWidth,
                        densities && sizes && spreads,
                        comparison.throwPercent(),
                        100 * half / comparison.otherLine.edgeM(),
                        flowPercent,
                        comparison.spreadPoints()),
                Verdicts.direction(comparison.throwPercent()),
                other.bulkKnown() ? other.bulkKgPerL() : null,
                other.sizeKnown() ? other.d50Mm() : null,
                other.spreadKnown() && reference.sizes() != null
                        ? reference.sizes().spreadIndexPercent()
                        : null,
                pattern);
    }
}
