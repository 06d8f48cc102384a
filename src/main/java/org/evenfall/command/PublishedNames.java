package org.evenfall.command;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import org.evenfall.granule.PublishedBand;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Interval;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.RatePlan;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.PatternChange;
import org.evenfall.reference.PatternOverlay;
import org.evenfall.reference.RankedProduct;

/**
 * Keys of the published JSON whose Java names have changed since. Result records are written by the names of their
 * components; a component that is renamed or moved into a group gets its published key here, so that programs that read
 * the results go on working. An interval has the keys of its two ends by {@link IntervalKeys}.
 */
final class PublishedNames {

    private PublishedNames() {}

    /** A mapper that writes result records under their published keys. */
    static ObjectMapper mapper() {
        return PublishedTrayNames.addTo(JsonMapper.builder())
                .addModule(new SimpleModule().setSerializerModifier(new IntervalKeys()))
                .addMixIn(SizeDistribution.class, SizeDistributionKeys.class)
                .addMixIn(SieveResult.class, SieveResultKeys.class)
                .addMixIn(PublishedBand.class, PublishedBandKeys.class)
                .addMixIn(PublishedBand.Quantity.class, BandQuantityKeys.class)
                .addMixIn(HeightResult.class, HeightResultKeys.class)
                .addMixIn(HeightResult.Crop.class, CropKeys.class)
                .addMixIn(HeightResult.Now.class, HeightNowKeys.class)
                .addMixIn(RatePlan.class, RatePlanKeys.class)
                .addMixIn(RatePlan.Flow.class, PlanFlowKeys.class)
                .addMixIn(RatePlan.Bucket.class, PlanBucketKeys.class)
                .addMixIn(BucketResult.class, BucketResultKeys.class)
                .addMixIn(BucketResult.Flow.class, BucketFlowKeys.class)
                .addMixIn(BucketResult.Next.class, NextOpeningKeys.class)
                .addMixIn(MatchResult.class, MatchResultKeys.class)
                .addMixIn(RankedProduct.class, RankedProductKeys.class)
                .addMixIn(RankedProduct.Difference.class, DifferenceKeys.class)
                .addMixIn(RankedProduct.ThrowDifference.class, ThrowDifferenceKeys.class)
                .addMixIn(PatternChange.class, PatternChangeKeys.class)
                .build();
    }

    /** {@link SizeDistribution}. */
    interface SizeDistributionKeys {
        @JsonProperty("lnSdStandardError")
        double sigmaStandardError();
    }

    /** {@link SieveResult}. */
    interface SieveResultKeys {
        @JsonProperty("d50*Mm")
        Interval d50IntervalMm();

        @JsonUnwrapped
        SieveResult.Indices indices();
    }

    /** {@link PublishedBand}. */
    interface PublishedBandKeys {
        @JsonProperty("*")
        Interval range();
    }

    /** {@link PublishedBand.Quantity}. */
    enum BandQuantityKeys {
        @JsonProperty("bulkDensityKgPerL")
        BULK_DENSITY,
        @JsonProperty("share2To4MmPercent")
        SHARE_2_TO_4_MM,
        @JsonProperty("d50Mm")
        MEDIAN,
        @JsonProperty("spreadIndexPercent")
        SPREAD_INDEX
    }

    /** {@link HeightResult}. */
    interface HeightResultKeys {
        @JsonUnwrapped
        HeightResult.Crop crop();

        @JsonUnwrapped
        HeightResult.Now now();

        @JsonProperty("throwPer10Cm*M")
        Interval throwPer10CmRangeM();
    }

    /** {@link HeightResult.Crop}. */
    interface CropKeys {
        @JsonProperty("cropM")
        double meanM();

        @JsonProperty("cropSpreadM")
        double spreadM();

        @JsonProperty("cropLaterM")
        double laterM();
    }

    /** {@link HeightResult.Now}. */
    interface HeightNowKeys {
        @JsonProperty("nowOverCropM")
        Double overCropM();
    }

    /** {@link RatePlan}. */
    interface RatePlanKeys {
        @JsonUnwrapped
        RatePlan.Amounts amounts();

        @JsonUnwrapped
        RatePlan.Logistics logistics();

        @JsonUnwrapped
        RatePlan.Flow flow();

        @JsonUnwrapped
        RatePlan.Bucket bucket();

        @JsonUnwrapped
        RatePlan.Money money();
    }

    /** {@link RatePlan.Flow}. */
    interface PlanFlowKeys {
        @JsonProperty("flowKgPerMin")
        Double kgPerMin();

        @JsonProperty("flowPerOutletKgPerMin")
        Double outletKgPerMin();
    }

    /** {@link RatePlan.Bucket}. */
    interface PlanBucketKeys {
        @JsonProperty("bucketSeconds")
        Double seconds();

        @JsonProperty("bucketKg")
        Double kg();

        @JsonProperty("bucket*Kg")
        Interval toleranceKg();

        @JsonProperty("bucketL")
        Double litres();

        @JsonProperty("bucket30Kg")
        Double halfMinuteKg();

        @JsonProperty("bucket30L")
        Double halfMinuteLitres();
    }

    /** {@link BucketResult}. */
    interface BucketResultKeys {
        @JsonUnwrapped
        BucketResult.Flow flow();

        @JsonUnwrapped
        BucketResult.Agreement agreement();

        @JsonUnwrapped
        BucketResult.Next next();
    }

    /** {@link BucketResult.Flow}. */
    interface BucketFlowKeys {
        @JsonProperty("kgPerMin")
        double totalKgPerMin();
    }

    /** {@link BucketResult.Next}. */
    interface NextOpeningKeys {
        @JsonProperty("nextOpeningLeft")
        Double left();

        @JsonProperty("nextOpeningRight")
        Double right();

        @JsonProperty("nextFrom")
        Object source();
    }

    /** {@link MatchResult}. */
    interface MatchResultKeys {
        @JsonProperty("laidOver")
        PatternOverlay overlay();

        @JsonProperty("throwAgainstDense*M")
        Interval throwAgainstDenseIntervalM();

        @JsonProperty("outOfReach")
        boolean outOfReach();
    }

    /** {@link RankedProduct}. */
    interface RankedProductKeys {
        @JsonUnwrapped
        RankedProduct.Properties own();

        @JsonUnwrapped
        RankedProduct.Difference difference();

        @JsonUnwrapped
        RankedProduct.ThrowDifference throwDifference();
    }

    /** {@link RankedProduct.Difference}. */
    interface DifferenceKeys {
        @JsonProperty("densityDifferencePercent")
        Double densityPercent();

        @JsonProperty("d50DifferencePercent")
        Double d50Percent();

        @JsonProperty("spreadIndexDifference")
        Double spreadIndexPoints();

        @JsonProperty("flowDifferencePercent")
        Double flowPercent();
    }

    /** {@link RankedProduct.ThrowDifference}. */
    interface ThrowDifferenceKeys {
        @JsonProperty("throwDifferenceM")
        double metres();

        @JsonProperty("throw*M")
        Interval intervalM();

        @JsonProperty("throwDifferencePercent")
        double percent();
    }

    /** {@link PatternChange}. */
    interface PatternChangeKeys {
        @JsonProperty("keptCv*Percent")
        Interval keptCvIntervalPercent();

        @JsonProperty("cvChange*Percent")
        Interval changeIntervalPercent();
    }
}
