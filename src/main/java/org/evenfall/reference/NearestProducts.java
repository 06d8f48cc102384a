package org.evenfall.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.evenfall.granule.ProductForm;
import org.jspecify.annotations.Nullable;

/**
 * Ranks tested products by how differently they would land: throw, flow at one opening and size spread, each in units of
 * what measuring can tell, a missing figure counting as its whole uncertainty.
 */
public final class NearestProducts {

    /** What careful measuring can tell apart in flow, %. Ours. */
    public static final double FLOW_UNIT_PERCENT = 3;

    /** What careful sieving can tell apart in the spread index, points. Ours. */
    public static final double SPREAD_UNIT_POINTS = 3;

    /** Working widths within this are the same, %. */
    public static final double SAME_WIDTH_PERCENT = 1;

    private static final double Z90 = 1.6449;

    private NearestProducts() {}

    /**
     * @param seed seed of the simulated repeats
     * @param redraws how many times the measurements are redone in simulation, at least 1
     */
    public static MatchResult rank(
            Candidate product, List<TestedProduct> references, RankContext context, long seed, int redraws) {
        Landed own = Landed.of(product, context);
        List<Landed> others = references.stream()
                .map(reference -> Landed.of(reference, context))
                .toList();
        double throwUnitM = own.throwSlopeM() * Math.hypot(0.03, Landed.LN_PACKING_ERROR);
        int[] first = redraw(own, others, throwUnitM, seed, redraws);
        List<RankedReference> ranked = new ArrayList<>();
        for (int i = 0; i < references.size(); i++) {
            ranked.add(compare(
                    product, own, references.get(i), others.get(i), context, throwUnitM, first[i] / (double) redraws));
        }
        ranked.sort(Comparator.comparing((RankedReference r) -> !r.sameWidth()).thenComparing(RankedReference::score));
        RankedReference chosen = ranked.stream()
                .filter(reference -> reference.id().equals(context.chosenId()))
                .findFirst()
                .orElse(ranked.isEmpty() ? null : ranked.get(0));
        boolean outOfReach = Reach.outOfReach(product, context, own.throwErrorM() / own.throwM());
        double againstDense = own.throwM()
                - Landed.of(new Candidate(ProductForm.CALCIUM_AMMONIUM_NITRATE, 1.0, 0.01, null), context)
                        .throwM();
        return new MatchResult(
                ranked,
                chosen,
                verdict(chosen, outOfReach),
                direction(chosen, againstDense / (own.throwM() - againstDense)),
                againstDense,
                Reach.widestM(product, context),
                outOfReach);
    }

    private static Verdict verdict(@Nullable RankedReference chosen, boolean outOfReach) {
        if (outOfReach) {
            return Verdict.NOT_AT_THIS_WIDTH;
        }
        return chosen == null ? Verdict.NO_REFERENCE : chosen.verdict();
    }

    /** Without a reference the start is judged against the dense product the person knows. */
    private static Direction direction(@Nullable RankedReference chosen, double againstDenseShare) {
        return chosen == null ? Verdicts.direction(100 * againstDenseShare) : chosen.direction();
    }

    private static RankedReference compare(
            Candidate product,
            Landed own,
            TestedProduct reference,
            Landed other,
            RankContext context,
            double throwUnitM,
            double closestShare) {
        double throwM = own.throwM() - other.throwM();
        double throwError = Math.hypot(own.throwErrorM(), other.throwErrorM());
        double flow = 100 * (own.flow() / other.flow() - 1);
        double spread = own.spreadIndexPercent() - other.spreadIndexPercent();
        double score = Math.sqrt((square(throwM) + square(other.throwErrorM())) / square(throwUnitM)
                + (square(flow) + square(other.flowErrorPercent())) / square(FLOW_UNIT_PERCENT)
                + (square(spread) + square(other.spreadErrorPercent())) / square(SPREAD_UNIT_POINTS));
        double percent = 100 * throwM / other.throwM();
        boolean sizesKnown = product.sizes() != null && reference.sizes() != null;
        boolean sameWidth = Math.abs(reference.widthM() / context.tramlineWidthM() - 1) <= SAME_WIDTH_PERCENT / 100;
        Double spreadPoints = sizesKnown ? Double.valueOf(spread) : null;
        return new RankedReference(
                reference.id(),
                reference.name(),
                reference.widthM(),
                score,
                reference.bulkDensityKgPerL() == null
                        ? null
                        : Double.valueOf(100 * (product.bulkDensityKgPerL() / reference.bulkDensityKgPerL() - 1)),
                product.sizes() == null || reference.sizes() == null
                        ? null
                        : Double.valueOf(100
                                * (product.sizes().d50Mm() / reference.sizes().d50Mm() - 1)),
                spreadPoints,
                flow,
                throwM,
                throwM - Z90 * throwError,
                throwM + Z90 * throwError,
                percent,
                closestShare,
                sameWidth,
                Verdicts.of(percent, 100 * Z90 * throwError / other.throwM(), spreadPoints, sameWidth),
                Verdicts.direction(percent));
    }

    /** How often each reference ranks first when every measurement is drawn anew. */
    private static int[] redraw(Landed own, List<Landed> others, double throwUnitM, long seed, int redraws) {
        if (redraws < 1) {
            throw new IllegalArgumentException("at least one redraw: " + redraws);
        }
        int[] first = new int[others.size()];
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        for (int round = 0; round < redraws && !others.isEmpty(); round++) {
            double throwM = own.throwM() + own.throwErrorM() * normal.sample();
            double flow = own.flow() * (1 + own.flowErrorPercent() / 100 * normal.sample());
            double spread = own.spreadIndexPercent() + own.spreadErrorPercent() * normal.sample();
            int nearest = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < others.size(); i++) {
                Landed other = others.get(i);
                double distance = square((throwM - other.throwM() - other.throwErrorM() * normal.sample()) / throwUnitM)
                        + square((100 * (flow / other.flow() - 1) - other.flowErrorPercent() * normal.sample())
                                / FLOW_UNIT_PERCENT)
                        + square((spread - other.spreadIndexPercent() - other.spreadErrorPercent() * normal.sample())
                                / SPREAD_UNIT_POINTS);
                if (distance < least) {
                    least = distance;
                    nearest = i;
                }
            }
            first[nearest]++;
        }
        return first;
    }

    private static double square(double value) {
        return value * value;
    }
}
