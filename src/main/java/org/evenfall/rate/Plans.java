package org.evenfall.rate;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** From a wanted rate to tonnes, bags, flow, the bucket and the money. */
public final class Plans {

    /** Times offered for a bucket test, longest first, s. */
    private static final double[] BUCKET_SECONDS = {30, 20, 15, 10};

    /** A bucket is filled to this share at most. Ours. */
    private static final double FULL_SHARE = 0.9;

    private Plans() {}

    public static RatePlan of(PlanInput in) {
        Double tonnes = times(in.areaHa(), in.productKgPerHa() / 1000);
        Double bags = over(times(tonnes, 1000), in.bagKg());
        Double flow = in.widthM() == null || in.speedKmPerH() == null
                ? null
                : Double.valueOf(Flows.kgPerMin(in.productKgPerHa(), in.widthM(), in.speedKmPerH()));
        Double perOutlet = times(flow, 1.0 / in.outlets());
        Double hopperKg = in.hopperL() == null ? null : times(in.bulkDensityKgPerL(), in.hopperL());
        Double seconds = perOutlet == null ? null : bucketSeconds(perOutlet, in.bulkDensityKgPerL(), in.bucketL());
        Double bucketKg = seconds == null ? null : times(perOutlet, seconds / 60);
        Double bucket30Kg = times(perOutlet, 0.5);
        double band = in.tolerancePercent() / 100;
        Double cost = in.pricePerT() == null
                ? null
                : Double.valueOf(Nutrients.costPerKgN(in.pricePerT(), in.nitrogenPercent(), in.effectivenessPercent()));
        Double otherCost = null;
        Double parity = null;
        if (in.otherPricePerT() != null && in.otherNitrogenPercent() != null) {
            otherCost = Nutrients.costPerKgN(in.otherPricePerT(), in.otherNitrogenPercent(), 100);
            parity = Nutrients.parityPricePerT(in.otherPricePerT(), in.otherNitrogenPercent(), in.nitrogenPercent())
                    * in.effectivenessPercent()
                    / 100;
        }
        Double saving = cost == null || otherCost == null
                ? null
                : times(in.areaHa(), in.nitrogenKgPerHa() * in.effectivenessPercent() / 100 * (otherCost - cost));
        return new RatePlan(
                in.nitrogenKgPerHa(),
                in.productKgPerHa(),
                in.nitrogenKgPerHa() / Nutrients.HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE_KG_PER_HA,
                in.speedKmPerH(),
                in.areaHa(),
                tonnes,
                bags,
                bags == null ? null : Double.valueOf(Math.ceil(bags - 1e-9)),
                over(times(tonnes, 1000), hopperKg),
                times(in.bagKg(), 1 / in.productKgPerHa()),
                flow,
                perOutlet,
                seconds,
                bucketKg,
                times(bucketKg, 1 - band),
                times(bucketKg, 1 + band),
                over(bucketKg, in.bulkDensityKgPerL()),
                bucket30Kg,
                over(bucket30Kg, in.bulkDensityKgPerL()),
                firstOpening(in, flow),
                cost,
                otherCost,
                parity,
                saving);
    }

    /** The longest offered time whose catch fits the bucket; 30 s when no bucket or density is known, null when none fits. */
    private static @Nullable Double bucketSeconds(
            double perOutletKgPerMin, @Nullable Double densityKgPerL, @Nullable Double bucketL) {
        if (densityKgPerL == null || bucketL == null) {
            return BUCKET_SECONDS[0];
        }
        for (double seconds : BUCKET_SECONDS) {
            if (perOutletKgPerMin * seconds / 60 / densityKgPerL <= FULL_SHARE * bucketL) {
                return seconds;
            }
        }
        return null;
    }

    private static @Nullable Double firstOpening(PlanInput in, @Nullable Double flow) {
        if (in.table() == null || flow == null) {
            return null;
        }
        OptionalDouble opening = in.table().opening(flow);
        return opening.isPresent() ? Double.valueOf(opening.getAsDouble()) : null;
    }

    private static @Nullable Double times(@Nullable Double value, double factor) {
        return value == null ? null : Double.valueOf(value * factor);
    }

    private static @Nullable Double over(@Nullable Double value, @Nullable Double divisor) {
        return value == null || divisor == null ? null : Double.valueOf(value / divisor);
    }
}
