package org.evenfall.setup.path;

import org.evenfall.finding.Step;
import org.evenfall.rate.NitrogenEfficiency;
import org.evenfall.rate.UnitsBasis;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.BucketMethod;
import org.evenfall.setup.entry.PlanEntries;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.entry.RateEntries;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SpeedRunEntry;

/** The rate and its checks: entries of step 5. */
public final class RatePaths {

    /** The record of this step. */
    public static final Part<RateEntries> RATE = Part.top("rate", Step.RATE, Setup::rate, Setup::withRate);

    /** The plan. */
    public static final Part<PlanEntries> PLAN = RATE.part("plan", RateEntries::plan, RateEntries::withPlan);

    /** Speed measured. */
    public static final Rows<RateEntries, SpeedRunEntry> SPEED_RUNS = RATE.rows(
            "speedRuns", "rate.speedTitle", SpeedRunEntry.EMPTY, RateEntries::speedRuns, RateEntries::withSpeedRuns);

    /** Bucket tests, oldest first. */
    public static final Rows<RateEntries, BucketEntry> BUCKET_TESTS = RATE.rows(
                    "bucketTests",
                    "rate.bucketTitle",
                    BucketEntry.EMPTY,
                    RateEntries::bucketTests,
                    RateEntries::withBucketTests)
            .neededByAssessment();

    /** Product used, kg, t or lb. */
    public static final Quantity<RateEntries> HOPPER_USED =
            RATE.quantity("hopperUsed", Ranges.HOPPER_USED, RateEntries::hopperUsed, RateEntries::withHopperUsed);

    /** Area done with it, ha or ac. */
    public static final Quantity<RateEntries> AREA_DONE =
            RATE.quantity("areaDone", "rate.areaDone", Ranges.AREA, RateEntries::areaDone, RateEntries::withAreaDone);

    /** How the rate was given. */
    public static final Choice<PlanEntries, RateBasis> BASIS =
            PLAN.choice("basis", "rate.basis", RateBasis.class, PlanEntries::basis, PlanEntries::withBasis);

    /** Nitrogen wanted, kg/ha, lb/ac or units/ac. */
    public static final Quantity<PlanEntries> NITROGEN_RATE = PLAN.quantity(
                    "nitrogenRate",
                    "field.nitrogenRate",
                    RangeRules.NITROGEN_RATE,
                    PlanEntries::nitrogenRate,
                    PlanEntries::withNitrogenRate)
            .neededByAssessment();

    /** What a unit means, where units were typed. */
    public static final Choice<PlanEntries, UnitsBasis> UNITS_BASIS = PLAN.choice(
            "unitsBasis", "rate.unit", UnitsBasis.class, PlanEntries::unitsBasis, PlanEntries::withUnitsBasis);

    /** Nitrogen of each pass of the season, in order, kg/ha, lb/ac or units/ac. */
    public static final QuantityList<PlanEntries> NITROGEN_SPLITS = PLAN.quantities(
            "nitrogenSplits",
            "rate.nitrogenSplits",
            RangeRules.NITROGEN_RATE,
            PlanEntries::nitrogenSplits,
            PlanEntries::withNitrogenSplits);

    /** Product rate, kg/ha or lb/ac. */
    public static final Quantity<PlanEntries> PRODUCT_RATE = PLAN.quantity(
                    "productRate", Ranges.PRODUCT_RATE, PlanEntries::productRate, PlanEntries::withProductRate)
            .neededByAssessment();

    /** Forward speed, km/h, m/s or mph. */
    public static final Quantity<PlanEntries> SPEED = PLAN.quantity(
                    "speed", Ranges.SPEED, PlanEntries::speed, PlanEntries::withSpeed)
            .needed("missing.speed");

    /** Area, ha or ac. */
    public static final Quantity<PlanEntries> AREA =
            PLAN.quantity("area", Ranges.AREA, PlanEntries::area, PlanEntries::withArea);

    /** Mass of a bag, kg. */
    public static final Quantity<PlanEntries> BAG_MASS =
            PLAN.quantity("bagMass", Ranges.BAG_MASS, PlanEntries::bagMass, PlanEntries::withBagMass);

    /** Hopper volume, L or m³. */
    public static final Quantity<PlanEntries> HOPPER_VOLUME = PLAN.quantity(
            "hopperVolume", Ranges.HOPPER_VOLUME, PlanEntries::hopperVolume, PlanEntries::withHopperVolume);

    /** The largest bucket, L. */
    public static final Quantity<PlanEntries> BUCKET_VOLUME = PLAN.quantity(
            "bucketVolume", Ranges.BUCKET_VOLUME, PlanEntries::bucketVolume, PlanEntries::withBucketVolume);

    /** Price per tonne. */
    public static final Quantity<PlanEntries> PRICE = PLAN.quantity(
                    "price", Ranges.PRICE, PlanEntries::price, PlanEntries::withPrice)
            .keptPrivate();

    /** Price per tonne of the product used before. */
    public static final Quantity<PlanEntries> OTHER_PRICE = PLAN.quantity(
                    "otherPrice", "rate.otherPrice", Ranges.PRICE, PlanEntries::otherPrice, PlanEntries::withOtherPrice)
            .keptPrivate();

    /** Nitrogen share of the product used before, %. */
    public static final Quantity<PlanEntries> OTHER_NITROGEN = PLAN.quantity(
            "otherNitrogen",
            "rate.otherNitrogen",
            Ranges.NITROGEN_SHARE,
            PlanEntries::otherNitrogen,
            PlanEntries::withOtherNitrogen);

    /** Bulk density of the product used before, kg/L or kg/m³. */
    public static final Quantity<PlanEntries> OTHER_DENSITY = PLAN.quantity(
            "otherDensity",
            "rate.otherDensity",
            Ranges.BULK_DENSITY,
            PlanEntries::otherDensity,
            PlanEntries::withOtherDensity);

    /** Share of the nitrogen of untreated urea counted on, as published; a typed share goes before it. */
    public static final Choice<PlanEntries, NitrogenEfficiency> NITROGEN_EFFICIENCY = PLAN.choice(
            "nitrogenEfficiency",
            "rate.nitrogenEfficiency",
            NitrogenEfficiency.class,
            PlanEntries::nitrogenEfficiency,
            PlanEntries::withNitrogenEfficiency);

    /** Share of the nitrogen counted on, %, where the person wants one. */
    public static final Quantity<PlanEntries> EFFECTIVENESS = PLAN.quantity(
            "effectiveness", Ranges.EFFECTIVENESS, PlanEntries::effectiveness, PlanEntries::withEffectiveness);

    /** Allowed deviation of the rate, %. */
    public static final Quantity<PlanEntries> TOLERANCE =
            PLAN.quantity("tolerance", Ranges.TOLERANCE, PlanEntries::tolerance, PlanEntries::withTolerance);

    /** M or ft. */
    public static final Quantity<SpeedRunEntry> RUN_DISTANCE = SPEED_RUNS
            .row()
            .quantity("distance", Ranges.DISTANCE, SpeedRunEntry::distance, SpeedRunEntry::withDistance);

    /** S. */
    public static final Quantity<SpeedRunEntry> RUN_TIME =
            SPEED_RUNS.row().quantity("time", Ranges.RUN_TIME, SpeedRunEntry::time, SpeedRunEntry::withTime);

    /** Opening left. */
    public static final Quantity<BucketEntry> BUCKET_OPENING_LEFT = BUCKET_TESTS
            .row()
            .quantity(
                    "openingLeft",
                    "rate.openingLeft",
                    RangeRules.OPENING,
                    BucketEntry::openingLeft,
                    BucketEntry::withOpeningLeft)
            .labelledWhen(RangeRules::byFactor, "rate.factor");

    /** Opening right. */
    public static final Quantity<BucketEntry> BUCKET_OPENING_RIGHT = BUCKET_TESTS
            .row()
            .quantity(
                    "openingRight",
                    "rate.openingRight",
                    RangeRules.OPENING,
                    BucketEntry::openingRight,
                    BucketEntry::withOpeningRight)
            .labelledWhen(RangeRules::byFactor, "rate.factor");

    /** How the flow was measured. */
    public static final Choice<BucketEntry, BucketMethod> BUCKET_METHOD = BUCKET_TESTS
            .row()
            .choice("method", "rate.method", BucketMethod.class, BucketEntry::method, BucketEntry::withMethod);

    /** S. */
    public static final Quantity<BucketEntry> BUCKET_TIME = BUCKET_TESTS
            .row()
            .quantity("time", "rate.time", Ranges.BUCKET_TIME, BucketEntry::time, BucketEntry::withTime);

    /** Weight of the empty bucket, kg, g or lb. */
    public static final Quantity<BucketEntry> BUCKET_BUCKET_EMPTY = BUCKET_TESTS
            .row()
            .quantity(
                    "bucketEmpty",
                    "rate.empty",
                    Ranges.BUCKET_EMPTY,
                    BucketEntry::bucketEmpty,
                    BucketEntry::withBucketEmpty);

    /** Weight that ran through one outlet and was timed, kg, t or lb. */
    public static final Quantity<BucketEntry> BUCKET_KNOWN_WEIGHT = BUCKET_TESTS
            .row()
            .quantity(
                    "knownWeight",
                    "rate.knownWeight",
                    Ranges.KNOWN_WEIGHT,
                    BucketEntry::knownWeight,
                    BucketEntry::withKnownWeight);

    /** Weight caught left with the bucket, each repeat. */
    public static final QuantityList<BucketEntry> BUCKET_LEFT = BUCKET_TESTS
            .row()
            .quantities("left", "rate.catchesLeft", Ranges.BUCKET_MASS, BucketEntry::left, BucketEntry::withLeft);

    /** Weight caught right with the bucket, each repeat. */
    public static final QuantityList<BucketEntry> BUCKET_RIGHT = BUCKET_TESTS
            .row()
            .quantities("right", "rate.catchesRight", Ranges.BUCKET_MASS, BucketEntry::right, BucketEntry::withRight);

    /** Time of the known weight left, each repeat, s or min. */
    public static final QuantityList<BucketEntry> BUCKET_LEFT_TIMES = BUCKET_TESTS
            .row()
            .quantities(
                    "leftTimes",
                    "rate.timesLeft",
                    Ranges.THROUGH_TIME,
                    BucketEntry::leftTimes,
                    BucketEntry::withLeftTimes);

    /** Time of the known weight right, each repeat, s or min. */
    public static final QuantityList<BucketEntry> BUCKET_RIGHT_TIMES = BUCKET_TESTS
            .row()
            .quantities(
                    "rightTimes",
                    "rate.timesRight",
                    Ranges.THROUGH_TIME,
                    BucketEntry::rightTimes,
                    BucketEntry::withRightTimes);

    /** Weight that the terminal shows for one catch of all outlets, kg, g or lb. */
    public static final Quantity<BucketEntry> BUCKET_SHOWN = BUCKET_TESTS
            .row()
            .quantity("shown", "rate.shown", Ranges.BUCKET_MASS, BucketEntry::shown, BucketEntry::withShown);

    /** Bulk density of the product when it was caught, kg/L or kg/m³. */
    public static final Quantity<BucketEntry> BUCKET_BULK_DENSITY = BUCKET_TESTS
            .row()
            .quantity("bulkDensity", Ranges.BULK_DENSITY, BucketEntry::bulkDensity, BucketEntry::withBulkDensity);

    /** Delivery that was caught. */
    public static final Text<BucketEntry> BUCKET_DELIVERY =
            BUCKET_TESTS.row().text("delivery", "test.delivery", BucketEntry::delivery, BucketEntry::withDelivery);

    /** How the machine was set. */
    public static final Nested<BucketEntry, SettingsEntries> BUCKET_SETTINGS =
            BUCKET_TESTS.row().nested("settings", BucketEntry::settings, BucketEntry::withSettings);

    /** ISO date, may be empty. */
    public static final Text<BucketEntry> BUCKET_DATE =
            BUCKET_TESTS.row().date("date", "trays.date", BucketEntry::date, BucketEntry::withDate);

    private RatePaths() {}
}
