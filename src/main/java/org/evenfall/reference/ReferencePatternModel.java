package org.evenfall.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.evenfall.flight.CalmPatterns;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.Overlap;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.ThrowConditions;
import org.evenfall.flight.ThrowModel;
import org.evenfall.flight.TwinDisc;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.quantity.Interval;

/**
 * The landing model set for one product at one width, so that another can be spread with the same settings. The model's
 * discs have two free settings, as no person enters them: the direction of the fans and the take-off angle. They are
 * chosen for the least sum of the CVs at the width and 4 % to either side of it, so that a setting that is even at a
 * single width only is not taken. In calm air both driving patterns give the same field.
 */
final class ReferencePatternModel {

    /** Take-off angles tried in turn until the pattern is even enough, degrees. Assumption: discs are not tilted further. */
    private static final double[] TAKE_OFFS_DEG = {ThrowModel.TAKE_OFF_DEG, 10, 15};

    /** CV that is even enough, %. Assumption: below the limit of a good tray test. */
    private static final double EVEN_PERCENT = 8;

    /** Widths, share of the tramline width, at which the CV is kept low. */
    private static final double[] WIDTH_SHARES = {0.96, 1, 1.04};

    /** Directions of the fans that are searched, degrees: a grid, then halved steps round its best point. */
    private static final double LOWEST_DEG = 0;

    private static final double HIGHEST_DEG = 80;
    private static final double STEP_DEG = 8;
    private static final double LAST_STEP_DEG = 0.2;

    /** Shares of the interval of ln density, from its low to its high end, at which the pattern is computed. */
    private static final double[] INTERVAL_SHARES = {0, 0.25, 0.5, 0.75, 1};

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

    /** The model set for a product at a width, m, with an outlet speed, m/s, and a height above the crop canopy, m. */
    static ReferencePatternModel best(EstimatedProperties product, double speedMPerS, double heightM, double widthM) {
        ReferencePatternModel model = new ReferencePatternModel(speedMPerS, heightM, widthM);
        for (double takeOff : TAKE_OFFS_DEG) {
            if (model.cvPercent > EVEN_PERCENT) {
                model.search(model.patterns(product, takeOff), takeOff);
            }
        }
        return model;
    }

    private void search(CalmPatterns patterns, double takeOff) {
        double best = bestDirectionDeg(patterns);
        double cv = overlap(patterns.of(best, TwinDisc.SPREAD_DEG, TwinDisc.DISC_SPACING_M))
                .cvPercent(widthM);
        if (cv < cvPercent) {
            cvPercent = cv;
            directionDeg = best;
            takeOffDeg = takeOff;
        }
    }

    private double bestDirectionDeg(CalmPatterns patterns) {
        double best = LOWEST_DEG;
        double least = Double.MAX_VALUE;
        for (double direction = LOWEST_DEG; direction <= HIGHEST_DEG; direction += STEP_DEG) {
            double merit = merit(patterns, direction);
            if (merit < least) {
                least = merit;
                best = direction;
            }
        }
        for (double step = STEP_DEG / 2; step > LAST_STEP_DEG; step /= 2) {
            for (double direction : new double[] {best - step, best + step}) {
                double merit = merit(patterns, direction);
                if (merit < least) {
                    least = merit;
                    best = direction;
                }
            }
        }
        return best;
    }

    /** By how much the fans have to be turned towards wider for another product, at the same take-off, degrees. */
    double turnDeg(EstimatedProperties product) {
        return bestDirectionDeg(patterns(product, takeOffDeg)) - directionDeg;
    }

    private double merit(CalmPatterns patterns, double direction) {
        Overlap overlap = overlap(patterns.of(direction, TwinDisc.SPREAD_DEG, TwinDisc.DISC_SPACING_M));
        return Arrays.stream(WIDTH_SHARES)
                .map(share -> overlap.cvPercent(share * widthM))
                .sum();
    }

    private static Overlap overlap(SpreadPattern pass) {
        return new Overlap(pass, DrivingPattern.ROUND_AND_ROUND);
    }

    private CalmPatterns patterns(EstimatedProperties product, double takeOff) {
        return new CalmPatterns(
                new ThrowConditions(
                        SizeDistribution.exact(product.d50Mm(), Math.exp(product.sigma())),
                        product.granuleKgPerM3(),
                        speedMPerS,
                        heightM),
                takeOff);
    }

    /** CV at the width of the product that the model is set for, %. */
    double cvPercent() {
        return cvPercent;
    }

    /** The pattern of a product with these settings. */
    SpreadPattern pass(EstimatedProperties product) {
        return patterns(product, takeOffDeg).of(directionDeg, TwinDisc.SPREAD_DEG, TwinDisc.DISC_SPACING_M);
    }

    private double keptCvPercent(EstimatedProperties product) {
        return overlap(pass(product)).cvPercent(widthM);
    }

    /**
     * What becomes of the pattern of another product with these settings.
     *
     * @param product the other product
     * @param resetCvPercent CV of the product with settings of its own, %
     * @param lnDensity shifts of ln density that give the 90 % interval of the throw
     */
    PatternChange change(EstimatedProperties product, double resetCvPercent, Interval lnDensity) {
        double kept = keptCvPercent(product);
        double low = kept;
        double high = kept;
        for (double share : INTERVAL_SHARES) {
            double shift = lnDensity.low() + share * lnDensity.width();
            double cv = keptCvPercent(product.withBulk(product.bulkKgPerL() * Math.exp(shift)));
            low = Math.min(low, cv);
            high = Math.max(high, cv);
        }
        return new PatternChange(cvPercent, kept, new Interval(low, high), kept - cvPercent, resetCvPercent);
    }

    /** The patterns of two products with these settings, on the wider of their grids. */
    PatternOverlay overlay(String otherId, String otherName, EstimatedProperties product, EstimatedProperties other) {
        SpreadPattern own = pass(product);
        SpreadPattern theirs = pass(other);
        SpreadPattern wider = own.size() > theirs.size() ? own : theirs;
        List<Double> ownPerM = new ArrayList<>();
        List<Double> theirsPerM = new ArrayList<>();
        for (double x : wider.positionsM()) {
            ownPerM.add(own.at(x));
            theirsPerM.add(theirs.at(x));
        }
        return new PatternOverlay(otherId, otherName, wider.positionsM(), ownPerM, theirsPerM);
    }
}
