package org.evenfall.reference;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.flight.CalmPatterns;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.Overlap;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.ThrowConditions;
import org.evenfall.flight.ThrowModel;
import org.evenfall.flight.TwinDisc;
import org.evenfall.granule.ParticleDensities;
import org.evenfall.granule.SizeDistribution;

/**
 * The landing model set for one product at one width, so that another can be thrown with the same settings. The model's
 * discs have two settings that are free, as nobody tells them: the direction of the fans and the take-off angle. They are
 * chosen so that the product they are set for lies as even as it can at the width and 4 % beside it (a setting that holds
 * only on a knife's edge is none). In calm air both ways of driving give the same field.
 */
final class ReferencePatternModel {

    /** Take-off angles tried one after the other until the pattern is even enough, degrees. Ours. */
    private static final double[] TAKE_OFFS_DEG = {ThrowModel.TAKE_OFF_DEG, 10, 15};

    /** Even enough, %. Ours. */
    private static final double EVEN_PERCENT = 8;

    private static final double LOWEST_DEG = 0;
    private static final double HIGHEST_DEG = 80;
    private static final double STEP_DEG = 8;

    private final double speedMPerS;
    private final double heightM;
    private final double widthM;
    private double takeOffDeg;
    private double directionDeg;
    private double cvPercent = Double.MAX_VALUE;

    private ReferencePatternModel(double speedMPerS, double heightM, double widthM) {
        this.speedMPerS = speedMPerS;
        this.heightM = heightM;
        this.widthM = widthM;
    }

    /** Settings of the model that suit a product at a width. */
    static ReferencePatternModel best(EstimatedProperties product, double speedMPerS, double heightM, double widthM) {
        ReferencePatternModel settings = new ReferencePatternModel(speedMPerS, heightM, widthM);
        for (double takeOff : TAKE_OFFS_DEG) {
            if (settings.cvPercent > EVEN_PERCENT) {
                settings.search(settings.patterns(product, takeOff), takeOff);
            }
        }
        return settings;
    }

    private void search(CalmPatterns patterns, double takeOff) {
        double best = LOWEST_DEG;
        double least = Double.MAX_VALUE;
        for (double direction = LOWEST_DEG; direction <= HIGHEST_DEG; direction += STEP_DEG) {
            double merit = merit(patterns, direction);
            if (merit < least) {
                least = merit;
                best = direction;
            }
        }
        for (double step = STEP_DEG / 2; step > 0.2; step /= 2) {
            for (double direction : new double[] {best - step, best + step}) {
                double merit = merit(patterns, direction);
                if (merit < least) {
                    least = merit;
                    best = direction;
                }
            }
        }
        double cv = overlap(patterns.of(best, TwinDisc.SPREAD_DEG, TwinDisc.DISC_SPACING_M))
                .cvPercent(widthM);
        if (cv < cvPercent) {
            cvPercent = cv;
            directionDeg = best;
            takeOffDeg = takeOff;
        }
    }

    private double merit(CalmPatterns patterns, double direction) {
        Overlap overlap = overlap(patterns.of(direction, TwinDisc.SPREAD_DEG, TwinDisc.DISC_SPACING_M));
        return overlap.cvPercent(0.96 * widthM) + overlap.cvPercent(widthM) + overlap.cvPercent(1.04 * widthM);
    }

    private static Overlap overlap(SpreadPattern pass) {
        return new Overlap(pass, DrivingPattern.ROUND_AND_ROUND);
    }

    private CalmPatterns patterns(EstimatedProperties product, double takeOff) {
        return new CalmPatterns(
                new ThrowConditions(
                        new SizeDistribution(product.d50Mm(), Math.exp(product.sigma()), 0, 0, false),
                        1000 * product.bulkKgPerL() / ParticleDensities.USUAL_PACKING,
                        speedMPerS,
                        heightM),
                takeOff);
    }

    /** CV at the width of the product they are set for, %. */
    double cvPercent() {
        return cvPercent;
    }

    /** What a product lays with these settings. */
    SpreadPattern pass(EstimatedProperties product) {
        return patterns(product, takeOffDeg).of(directionDeg, TwinDisc.SPREAD_DEG, TwinDisc.DISC_SPACING_M);
    }

    private double keptCvPercent(EstimatedProperties product) {
        return overlap(pass(product)).cvPercent(widthM);
    }

    /**
     * @param resetCvPercent CV of the product with settings of its own, %
     * @param lnDensityError how far the density may be off, natural logarithm, so that the throw is off by its 90 % error
     */
    PatternChange change(EstimatedProperties product, double resetCvPercent, double lnDensityError) {
        double kept = keptCvPercent(product);
        double low = kept;
        double high = kept;
        for (double share : new double[] {-1, -0.5, 0.5, 1}) {
            double cv = keptCvPercent(product.withBulk(product.bulkKgPerL() * Math.exp(share * lnDensityError)));
            low = Math.min(low, cv);
            high = Math.max(high, cv);
        }
        return new PatternChange(cvPercent, kept, low, high, kept - cvPercent, resetCvPercent);
    }

    /** Both products with these settings, on one grid. */
    PatternOverlay laidOver(String otherId, String otherName, EstimatedProperties product, EstimatedProperties other) {
        SpreadPattern mine = pass(product);
        SpreadPattern theirs = pass(other);
        SpreadPattern wider = mine.size() > theirs.size() ? mine : theirs;
        List<Double> mineThere = new ArrayList<>();
        List<Double> theirsThere = new ArrayList<>();
        for (double x : wider.positionsM()) {
            mineThere.add(mine.at(x));
            theirsThere.add(theirs.at(x));
        }
        return new PatternOverlay(otherId, otherName, wider.positionsM(), mineThere, theirsThere);
    }
}
