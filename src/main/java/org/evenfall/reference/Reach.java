package org.evenfall.reference;

import java.util.List;
import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.ProductForm;

/**
 * The widest working width that looks reachable with the new product: a model. The flight model knows how far one product
 * is thrown against another, not how wide this machine works; that comes from what it has done: each reference at its
 * tested width, and the widest width of its handbook, taken to hold for a dense 27 % N product. Each is scaled by the
 * throw of the new product at the best settings: the highest disc speed allowed and a lever that throws wider.
 *
 * <p>Where nothing is known of the machine, its coarse granules must land at least {@link #NEEDED_SHARE} of the width
 * away, since the pattern has to fall gently past the half-way line; that is rougher and gets a wider margin.
 *
 * <p>A width is said to be out of reach only when it lies beyond the widest with the 90 % error of measurements and model
 * added.
 */
public final class Reach {

    /** Throw needed where nothing is known of the machine, share of the width. Ours. */
    public static final double NEEDED_SHARE = 0.6;

    /** Standard error of the model where nothing is known of the machine. Ours. */
    public static final double ROUGH_MODEL_ERROR = 0.12;

    /** Bulk density of a dense 27 % N product, kg/L: calcium ammonium nitrate, about 1.0 (press and extension, seen). */
    public static final double DENSE_KG_PER_L = 1.0;

    /** Error of ln d50 of such a product: the blenders' target of 3.25 ± 0.25 mm (seen) taken as a standard error. */
    public static final double DENSE_D50_ERROR = 0.05;

    /** What a lever that throws wider can still gain over a reference's settings, share of the throw. Ours. */
    public static final double LEVER_GAIN = 0.05;

    /** Standard error of the model itself in such a ratio. Ours. */
    public static final double MODEL_ERROR = 0.05;

    /** Above 52 m/s nearly all granules broke: Grift, Hofstee 1997, J. Agric. Eng. Res. 66:229–233 (seen). */
    public static final double FASTEST_OUTLET_M_PER_S = 52;

    private static final double Z90 = 1.6449;

    private Reach() {}

    /**
     * @param widestM widest width that looks reachable, m
     * @param outOfReach the tramline width lies beyond it with margin and uncertainty
     */
    record Answer(double widestM, boolean outOfReach) {}

    /** A dense 27 % N product as it usually is: bulk density 1.0 kg/L, median and spread as wide work wants them. */
    static EstimatedProperties dense() {
        return EstimatedProperties.of(
                ProductForm.CALCIUM_AMMONIUM_NITRATE,
                DENSE_KG_PER_L,
                EstimatedProperties.HANDBOOK_BULK_ERROR,
                null,
                null,
                null);
    }

    static Answer widest(
            RankContext context, List<Comparison> comparisons, EstimatedProperties product, ThrowLine now) {
        double speed = Math.min(
                FASTEST_OUTLET_M_PER_S, ThrowModel.outletSpeedMPerS(context.discRadiusM(), context.discRpmHighest()));
        ThrowLine fastest = ThrowLine.of(product, speed, context.heightOverCropM());
        double gain = Math.max(1, fastest.edgeM() / now.edgeM());
        if (context.widerLever()) {
            gain *= 1 + LEVER_GAIN;
        }
        double widest = 0;
        double error = 0;
        for (Comparison comparison : comparisons) {
            double width = comparison.reference.widthM()
                    * gain
                    * comparison.productLine.edgeM()
                    / comparison.otherLine.edgeM();
            if (width > widest) {
                widest = width;
                error = comparison.throwErrorM() / comparison.otherLine.edgeM();
            }
        }
        Double handbook = context.widestHandbookWidthM();
        if (handbook != null) {
            EstimatedProperties dense = dense();
            ThrowLine denseLine = ThrowLine.of(dense, speed, context.heightOverCropM());
            double width = handbook * fastest.edgeM() / denseLine.edgeM();
            if (width > widest) {
                widest = width;
                double own = fastest.errorM(product.bulkError(), product.d50Error(), product.sigmaStandardError());
                double theirs = denseLine.errorM(dense.bulkError(), DENSE_D50_ERROR, 0);
                error = Math.hypot(own, theirs) / denseLine.edgeM();
            }
        }
        double model = MODEL_ERROR;
        if (widest == 0) {
            widest = fastest.edgeM() / NEEDED_SHARE;
            error = fastest.errorM(product.bulkError(), product.d50Error(), product.sigmaStandardError())
                    / fastest.edgeM();
            model = ROUGH_MODEL_ERROR;
        }
        double margin = 1 + Z90 * Math.hypot(error, model);
        return new Answer(widest, context.tramlineWidthM() > widest * margin);
    }
}
