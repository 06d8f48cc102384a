package org.evenfall.reference;

import org.evenfall.flight.Flight;
import org.evenfall.flight.Throws;
import org.evenfall.granule.FlowScaling;
import org.evenfall.granule.ParticleDensities;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;

/**
 * One product as it would land, with how well each figure is known. Throw is taken as a straight line in ln d + ln ρ
 * round its value, so that it can be drawn anew many times at no cost.
 *
 * @param throwM landing distance of the median granule, m
 * @param throwSlopeM change of throw for a change of 1 in ln d or ln ρ, m
 * @param lnErrors standard error of ln d and ln ρ together
 * @param flow flow at one opening, kg/min, by Beverloo's form
 * @param flowErrorPercent its standard error, %
 * @param spreadIndexPercent spread index
 * @param spreadErrorPercent its standard error, points
 */
record Landed(
        double throwM,
        double throwSlopeM,
        double lnErrors,
        double flow,
        double flowErrorPercent,
        double spreadIndexPercent,
        double spreadErrorPercent) {

    /** Packing differs a little between products of one kind: standard error of ln ρ from bulk density. Ours. */
    static final double LN_PACKING_ERROR = 0.015;

    /** Standard error of a handbook's density. Ours. */
    static final double HANDBOOK_DENSITY_ERROR = 0.01;

    private static final double LN_D50_ERROR_WHEN_UNKNOWN = 0.12;
    private static final double LN_SD_ERROR_WHEN_UNKNOWN = 0.08;
    private static final double LN_DENSITY_ERROR_WHEN_UNKNOWN = 0.05;

    static Landed of(Candidate product, RankContext context) {
        return of(
                product.form(),
                product.bulkDensityKgPerL(),
                product.bulkDensitySe() / product.bulkDensityKgPerL(),
                product.sizes(),
                context);
    }

    static Landed of(TestedProduct product, RankContext context) {
        Double density = product.bulkDensityKgPerL();
        return of(
                product.form(),
                density == null ? usualDensityKgPerL(product.form()) : density,
                density == null ? LN_DENSITY_ERROR_WHEN_UNKNOWN : HANDBOOK_DENSITY_ERROR,
                product.sizes(),
                context);
    }

    private static Landed of(
            ProductForm form,
            double densityKgPerL,
            double lnDensityError,
            @Nullable SizeDistribution known,
            RankContext context) {
        SizeDistribution sizes = known == null ? usualSizes(form) : known;
        double particle = 1000 * densityKgPerL / ParticleDensities.USUAL_PACKING;
        double speed = Throws.outletSpeedMPerS(context.discRadiusM(), context.discRpm());
        double d50 = sizes.d50Mm();
        double distance = Throws.distanceM(d50, particle, speed, context.heightOverCropM());
        double slope = (Throws.distanceM(1.02 * d50, particle, speed, context.heightOverCropM())
                        - Throws.distanceM(0.98 * d50, particle, speed, context.heightOverCropM()))
                / 0.04;
        double lnDiameterError = sizes.lnD50StandardError();
        double openingMm = FlowScaling.USUAL_OPENING_MM;
        // W ∝ ρ (D − k d)^2.5: what an error of d does to the flow
        double flowToDiameter = 2.5 * FlowScaling.K * d50 / (openingMm - FlowScaling.K * d50);
        return new Landed(
                distance,
                slope,
                Math.sqrt(lnDiameterError * lnDiameterError
                        + lnDensityError * lnDensityError
                        + LN_PACKING_ERROR * LN_PACKING_ERROR),
                FlowScaling.kgPerMin(densityKgPerL, openingMm, d50, Flight.GRAVITY_M_PER_S2),
                100 * Math.hypot(lnDensityError, flowToDiameter * lnDiameterError),
                sizes.spreadIndexPercent(),
                100 * sizes.lnSdStandardError());
    }

    double throwErrorM() {
        return throwSlopeM * lnErrors;
    }

    /** Size where none is known: usual for the form. From memory. */
    static SizeDistribution usualSizes(ProductForm form) {
        double d50 = switch (form) {
            case PRILLED_UREA -> 2.0;
            case GRANULAR_UREA -> 3.2;
            case CALCIUM_AMMONIUM_NITRATE -> 3.6;
            case AMMONIUM_NITRATE -> 3.0;
            case OTHER, UNANSWERED -> 3.3;
        };
        return new SizeDistribution(d50, 1.2, LN_D50_ERROR_WHEN_UNKNOWN, LN_SD_ERROR_WHEN_UNKNOWN, false);
    }

    private static double usualDensityKgPerL(ProductForm form) {
        return switch (form) {
            case PRILLED_UREA, GRANULAR_UREA -> 0.75;
            case CALCIUM_AMMONIUM_NITRATE, AMMONIUM_NITRATE, OTHER, UNANSWERED -> 1.0;
        };
    }
}
