package org.evenfall.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.evenfall.flight.Throws;
import org.jspecify.annotations.Nullable;

/**
 * Which tested product would land most like the new one. References of this tramline width stand before all others,
 * because only their settings can be taken over; within each group the least standardised difference comes first.
 */
public final class NearestProducts {

    private static final double Z90 = 1.6449;

    private NearestProducts() {}

    /**
     * Ranks the references.
     *
     * @param candidate the new product; with nothing measured of it nothing is ranked
     * @param references the library, may be empty
     * @param context machine and field
     * @param seed seed of the simulation that redoes the measurements
     * @param redraws how often they are redone, at least 1
     */
    public static MatchResult rank(
            Candidate candidate, List<TestedProduct> references, RankContext context, long seed, int redraws) {
        if (redraws < 1) {
            throw new IllegalArgumentException("redraws must be at least 1: " + redraws);
        }
        if (!candidate.measured()) {
            return new MatchResult(List.of(), null, Verdict.NO_REFERENCE, Direction.AS_IT_IS, null, null, false);
        }
        double speed = Throws.outletSpeedMPerS(context.discRadiusM(), context.discRpm());
        Traits alone = traits(candidate, null);
        ThrowLine aloneLine = ThrowLine.of(alone, speed, context.heightOverCropM());
        List<Comparison> comparisons = new ArrayList<>();
        for (TestedProduct reference : references) {
            comparisons.add(compare(candidate, reference, alone, aloneLine, speed, context.heightOverCropM()));
        }
        comparisons.sort(Comparator.comparing((Comparison c) -> !sameWidth(c, context))
                .thenComparingDouble(Comparison::score)
                .thenComparing(c -> c.reference.id()));
        double[] closest = closestShares(comparisons, context, seed, redraws);
        List<RankedReference> ranked = new ArrayList<>();
        for (int i = 0; i < comparisons.size(); i++) {
            ranked.add(rank(comparisons.get(i), context, closest[i]));
        }
        double againstDense = aloneLine.edgeM()
                - ThrowLine.of(Reach.dense(), speed, context.heightOverCropM()).edgeM();
        Reach.Answer widest = Reach.widest(context, comparisons, alone, aloneLine);
        return result(ranked, context, againstDense, aloneLine.edgeM(), widest);
    }

    private static MatchResult result(
            List<RankedReference> ranked,
            RankContext context,
            double againstDenseM,
            double edgeM,
            Reach.Answer widest) {
        RankedReference chosen = ranked.stream()
                .filter(reference -> reference.id().equals(context.chosenId()))
                .findFirst()
                .orElse(ranked.isEmpty() ? null : ranked.get(0));
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
                widest.outOfReach());
    }

    private static Comparison compare(
            Candidate candidate,
            TestedProduct reference,
            Traits alone,
            ThrowLine aloneLine,
            double speedMPerS,
            double heightM) {
        Traits product = traits(candidate, reference);
        ThrowLine line = product.equals(alone) ? aloneLine : ThrowLine.of(product, speedMPerS, heightM);
        Traits other = Traits.of(
                reference.form(),
                reference.bulkDensityKgPerL(),
                Traits.HANDBOOK_BULK_ERROR,
                reference.sizes(),
                product.bulkKgPerL(),
                candidate.sizes());
        ThrowLine otherLine = ThrowLine.of(other, speedMPerS, heightM);
        return new Comparison(candidate.form(), reference, product, other, line, otherLine);
    }

    private static Traits traits(Candidate candidate, @Nullable TestedProduct reference) {
        Double bulk = candidate.bulkDensityKgPerL();
        return Traits.of(
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
    private static double[] closestShares(List<Comparison> comparisons, RankContext context, long seed, int redraws) {
        double[] firsts = new double[comparisons.size()];
        if (comparisons.isEmpty()) {
            return firsts;
        }
        int competing =
                (int) comparisons.stream().filter(c -> sameWidth(c, context)).count();
        competing = competing == 0 ? comparisons.size() : competing;
        NormalizedGaussianSampler gauss =
                ZigguratSampler.NormalizedGaussian.of(RandomSource.XO_RO_SHI_RO_128_PP.create(seed));
        double[] own = new double[3];
        double[] theirs = new double[3];
        for (int draw = 0; draw < redraws; draw++) {
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
            firsts[i] /= redraws;
        }
        return firsts;
    }

    private static void fill(double[] numbers, NormalizedGaussianSampler gauss) {
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = gauss.sample();
        }
    }

    private static RankedReference rank(Comparison comparison, RankContext context, double closestShare) {
        TestedProduct reference = comparison.reference;
        Traits product = comparison.product;
        Traits other = comparison.other;
        boolean densities = product.bulkKnown() && other.bulkKnown();
        boolean sizes = product.sizeKnown() && other.sizeKnown();
        boolean spreads = product.spreadKnown() && other.spreadKnown();
        double flowPercent = 100 * Math.expm1(comparison.lnFlow());
        double half = Z90 * comparison.throwErrorM();
        boolean sameWidth = sameWidth(comparison, context);
        return new RankedReference(
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
                        : null);
    }
}
