package org.evenfall.reference;

import java.util.List;
import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.quantity.NinetyPercent;

/**
 * The widest working width that is reachable with the new product: a model. The flight model gives how far one product is
 * thrown compared with another, not how wide this machine works; that comes from what it has done: each reference at its
 * tested width, and the widest width of its handbook, assumed to hold for a dense 27 % N product. Each is scaled by the
 * throw of the new product at the best settings: the highest disc speed allowed and a lever that throws wider.
 *
 * <p>Where nothing is known of the machine, the coarse granules must land at least {@link #NEEDED_SHARE} of the width
 * away, since the pattern has to fall gently past the midway line; that is less certain and gets a larger margin.
 *
 * <p>A width is probably beyond reach only where it exceeds the widest by more than the 90 % error of measurements and
 * model.
 */
public final class Reach {

    /** Throw needed where nothing is known of the machine, share of the width. Assumption: half the width and a slope. */
    public static final double NEEDED_SHARE = 0.6;

    /** Relative standard error of the model where nothing is known of the machine. Assumption: twice the usual and more. */
    public static final double ROUGH_MODEL_ERROR = 0.12;

    /** Bulk density of a dense 27 % N product, kg/L. Source: farm press and extension services, about 1.0. */
    public static final double DENSE_KG_PER_L = 1.0;

    /** Error of ln d50 of such a product. Assumption: the blenders' ± 0.25 mm, a little widened. */
    public static final double DENSE_D50_ERROR = 0.05;

    /** Its sizes: median and spread of the blenders' target. Assumption: the error of its spread. */
    private static final SizeDistribution DENSE_SIZES = new SizeDistribution(
            EstimatedProperties.USUAL_D50_MM, Math.exp(EstimatedProperties.USUAL_SIGMA), DENSE_D50_ERROR, 0.03, false);

    /** Gain of a lever that throws wider over a reference's settings, share of the throw. Assumption: some steps are left. */
    public static final double LEVER_GAIN = 0.05;

    /** Relative standard error of the model in a ratio of throws. Assumption: drag is known to about 6 %. */
    public static final double MODEL_ERROR = 0.05;

    /** Outlet speed above which nearly all granules broke. Source: Grift, Hofstee 1997, J. Agric. Eng. Res. 66:229–233. */
    public static final double FASTEST_OUTLET_M_PER_S = 52;

    private Reach() {}

    /**
     * The answer.
     *
     * @param widestM widest width that is reachable, m
     * @param reachability whether the tramline width is
     */
    record Answer(double widestM, Reachability reachability) {}

    /**
     * A width that one kind of evidence shows.
     *
     * @param widthM widest width by it, m
     * @param error relative standard error of its measurements
     * @param modelError relative standard error of the model in it
     */
    private record Evidence(double widthM, double error, double modelError) {

        Evidence widest(Evidence other) {
            return other.widthM > widthM ? other : this;
        }
    }

    /** A dense 27 % N product as usual: bulk density 1.0 kg/L, median and spread of the blenders' target. */
    static EstimatedProperties dense() {
        return EstimatedProperties.of(
                ProductForm.CALCIUM_AMMONIUM_NITRATE,
                DENSE_KG_PER_L,
                EstimatedProperties.HANDBOOK_BULK_ERROR,
                DENSE_SIZES,
                null,
                null);
    }

    /**
     * The widest width by all evidence.
     *
     * @param context machine and field
     * @param comparisons the new product compared with each reference
     * @param product the new product alone
     * @param now its throw at the edge at the disc speed in use
     */
    static Answer widest(
            RankContext context, List<Comparison> comparisons, EstimatedProperties product, ThrowLine now) {
        double speed = Math.min(
                FASTEST_OUTLET_M_PER_S, ThrowModel.outletSpeedMPerS(context.discRadiusM(), context.discRpmHighest()));
        ThrowLine fastest = edge(product, speed, context);
        Evidence widest = new Evidence(0, 0, MODEL_ERROR);
        for (Comparison comparison : comparisons) {
            widest = widest.widest(tested(comparison, gain(context, fastest, now)));
        }
        Double handbook = context.widestHandbookWidthM();
        if (handbook != null) {
            widest = widest.widest(handbook(handbook, product, fastest, edge(dense(), speed, context)));
        }
        if (widest.widthM() == 0) {
            double error = error(product, fastest) / fastest.metres();
            widest = new Evidence(fastest.metres() / NEEDED_SHARE, error, ROUGH_MODEL_ERROR);
        }
        double margin = 1 + NinetyPercent.Z * Math.hypot(widest.error(), widest.modelError());
        return new Answer(widest.widthM(), reachability(context.tramlineWidthM(), widest.widthM(), margin));
    }

    /** @param margin 1 and the relative 90 % error of the widest width */
    static Reachability reachability(double widthM, double widestM, double margin) {
        if (widthM > widestM * margin) {
            return Reachability.PROBABLY_NOT;
        }
        return widthM > widestM * (1 + Verdicts.SAME_WIDTH_SHARE) ? Reachability.DOUBTFUL : Reachability.YES;
    }

    private static ThrowLine edge(EstimatedProperties product, double speedMPerS, RankContext context) {
        return ThrowLine.of(product, ThrowLine.EDGE_Z, speedMPerS, context.heightOverCropM());
    }

    /** Gain of throw at the best settings; never below 1, as settings in use can be kept. */
    private static double gain(RankContext context, ThrowLine fastest, ThrowLine now) {
        double faster = Math.max(1, fastest.metres() / now.metres());
        return context.widerLever() ? faster * (1 + LEVER_GAIN) : faster;
    }

    private static Evidence tested(Comparison comparison, double gain) {
        double ratio = comparison.productThrow.edge().metres()
                / comparison.otherThrow.edge().metres();
        return new Evidence(
                comparison.reference.widthM() * gain * ratio,
                comparison.throwErrorM() / comparison.otherThrow.edge().metres(),
                MODEL_ERROR);
    }

    private static Evidence handbook(
            double widthM, EstimatedProperties product, ThrowLine fastest, ThrowLine denseLine) {
        double packing = Comparison.packingError(product.form(), dense().form());
        double denseError = denseLine.errorM(
                Math.hypot(dense().bulkError(), packing), dense().d50Error(), dense().sigmaStandardError());
        return new Evidence(
                widthM * fastest.metres() / denseLine.metres(),
                Math.hypot(error(product, fastest), denseError) / denseLine.metres(),
                MODEL_ERROR);
    }

    private static double error(EstimatedProperties product, ThrowLine line) {
        return line.errorM(product.bulkError(), product.d50Error(), product.sigmaStandardError());
    }
}
