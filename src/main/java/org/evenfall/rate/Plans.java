package org.evenfall.rate;

import java.util.OptionalDouble;
import org.evenfall.quantity.Interval;
import org.evenfall.rate.RatePlan.Amounts;
import org.evenfall.rate.RatePlan.Bucket;
import org.evenfall.rate.RatePlan.Flow;
import org.evenfall.rate.RatePlan.Logistics;
import org.evenfall.rate.RatePlan.Money;
import org.jspecify.annotations.Nullable;

/** From a wanted rate to tonnes, bags, flow, the bucket and the money. */
public final class Plans {

    /** Times offered for a bucket test, longest first, s. Assumption: shorter times are timed too coarsely. */
    private static final double[] BUCKET_SECONDS = {30, 20, 15, 10};

    /** Largest filling of a bucket, share. Assumption: room to carry it without spilling. */
    private static final double FULL_SHARE = 0.9;

    /** Rounding by which bags may exceed a whole number without another one. */
    private static final double ROUNDING = 1e-9;

    private Plans() {}

    /** The plan, as far as the input allows: a part whose inputs are null is null. */
    public static RatePlan of(PlanInput in) {
        Amounts amounts = in.rate().amounts();
        Flow flow = flow(in);
        return new RatePlan(amounts, logistics(in), flow, bucket(in, flow.outletKgPerMin()), money(in, amounts));
    }

    /** Tonnes = area × rate / 1000; bags and loads from their mass; area of a bag = its mass / rate. */
    private static Logistics logistics(PlanInput in) {
        double productKgPerHa = in.rate().productKgPerHa();
        Double areaHa = in.field().areaHa();
        Double bagKg = in.containers().bagKg();
        Double kg = times(areaHa, productKgPerHa);
        Double bags = over(kg, bagKg);
        Double hopperKg = product(in.containers().hopperL(), in.bulkDensityKgPerL());
        return new Logistics(
                areaHa,
                times(kg, 1e-3),
                bags,
                bags == null ? null : Double.valueOf(Math.ceil(bags - ROUNDING)),
                over(kg, hopperKg),
                over(bagKg, productKgPerHa));
    }

    private static Flow flow(PlanInput in) {
        Double widthM = in.field().widthM();
        Double speedKmPerH = in.field().speedKmPerH();
        if (widthM == null || speedKmPerH == null) {
            return new Flow(speedKmPerH, null, null, null);
        }
        double kgPerMin = Flows.kgPerMin(in.rate().productKgPerHa(), widthM, speedKmPerH);
        OptionalDouble opening = in.machine().table() == null
                ? OptionalDouble.empty()
                : in.machine().table().opening(kgPerMin);
        return new Flow(
                speedKmPerH,
                kgPerMin,
                kgPerMin / in.machine().outlets(),
                opening.isPresent() ? Double.valueOf(opening.getAsDouble()) : null);
    }

    private static Bucket bucket(PlanInput in, @Nullable Double outletKgPerMin) {
        if (outletKgPerMin == null) {
            return new Bucket(null, null, null, null, null, null);
        }
        Double seconds =
                seconds(outletKgPerMin, in.bulkDensityKgPerL(), in.containers().bucketL());
        Double kg = times(seconds, outletKgPerMin / 60);
        double band = in.tolerancePercent() / 100;
        double halfMinuteKg = outletKgPerMin / 2;
        return new Bucket(
                seconds,
                kg,
                kg == null ? null : new Interval(kg * (1 - band), kg * (1 + band)),
                over(kg, in.bulkDensityKgPerL()),
                halfMinuteKg,
                over(halfMinuteKg, in.bulkDensityKgPerL()));
    }

    /**
     * The longest offered time whose catch can be carried and, where bucket and density are known, fits the bucket, s; null
     * when none does.
     */
    private static @Nullable Double seconds(
            double outletKgPerMin, @Nullable Double densityKgPerL, @Nullable Double bucketL) {
        double most = densityKgPerL == null || bucketL == null
                ? BucketWeight.HEAVIEST_KG
                : Math.min(BucketWeight.HEAVIEST_KG, FULL_SHARE * bucketL * densityKgPerL);
        for (double seconds : BUCKET_SECONDS) {
            if (outletKgPerMin * seconds / 60 <= most * (1 + ROUNDING)) {
                return seconds;
            }
        }
        return null;
    }

    /**
     * Costs. The parity price counts only the effective share of this product's nitrogen, and so does the saving: area ×
     * effective nitrogen × difference of the costs per kg.
     */
    private static Money money(PlanInput in, Amounts amounts) {
        PlanInput.Prices prices = in.prices();
        double nitrogenPercent = in.rate().nitrogenPercent();
        double effectiveShare = prices.effectivenessPercent() / 100;
        Double cost = prices.pricePerT() == null
                ? null
                : Double.valueOf(
                        Nutrients.costPerKgN(prices.pricePerT(), nitrogenPercent, prices.effectivenessPercent()));
        if (prices.otherPricePerT() == null || prices.otherNitrogenPercent() == null) {
            return new Money(cost, null, null, null);
        }
        double otherCost = Nutrients.costPerKgN(prices.otherPricePerT(), prices.otherNitrogenPercent(), 100);
        double parity =
                Nutrients.parityPricePerT(prices.otherPricePerT(), prices.otherNitrogenPercent(), nitrogenPercent);
        Double saving = cost == null
                ? null
                : times(in.field().areaHa(), amounts.nitrogenKgPerHa() * effectiveShare * (otherCost - cost));
        return new Money(cost, otherCost, parity * effectiveShare, saving);
    }

    private static @Nullable Double times(@Nullable Double value, double factor) {
        return value == null ? null : Double.valueOf(value * factor);
    }

    private static @Nullable Double product(@Nullable Double first, @Nullable Double second) {
        return first == null || second == null ? null : Double.valueOf(first * second);
    }

    private static @Nullable Double over(@Nullable Double value, @Nullable Double divisor) {
        return value == null || divisor == null ? null : Double.valueOf(value / divisor);
    }
}
