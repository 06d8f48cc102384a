package org.evenfall.setup.path;

import org.evenfall.flight.DrivingPattern;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.YesNo;

/** What a tray test was driven under: entries that each tray test of step 6 has. */
public final class TestConditionPaths {

    private static final Part<TestConditionEntries> CONDITIONS = TrayPaths.TEST_CONDITIONS.part();

    /** Distance between tramlines, m or ft. */
    public static final Quantity<TestConditionEntries> TRAMLINE_WIDTH = CONDITIONS.quantity(
            "tramlineWidth",
            Ranges.TRAMLINE_WIDTH,
            TestConditionEntries::tramlineWidth,
            TestConditionEntries::withTramlineWidth);

    /** How the passes followed each other. */
    public static final Choice<TestConditionEntries, DrivingPattern> DRIVING_PATTERN = CONDITIONS.choice(
            "drivingPattern",
            "start.driving",
            DrivingPattern.class,
            TestConditionEntries::drivingPattern,
            TestConditionEntries::withDrivingPattern);

    /** Height over the rim of the trays, cm, m or in. */
    public static final Quantity<TestConditionEntries> HEIGHT_OVER_RIM = CONDITIONS.quantity(
            "heightOverRim",
            "test.heightOverRim",
            Ranges.HEIGHT_OVER_CROP,
            TestConditionEntries::heightOverRim,
            TestConditionEntries::withHeightOverRim);

    /** Forward speed, km/h, m/s or mph. */
    public static final Quantity<TestConditionEntries> SPEED =
            CONDITIONS.quantity("speed", Ranges.SPEED, TestConditionEntries::speed, TestConditionEntries::withSpeed);

    /** Product rate, kg/ha or lb/ac. */
    public static final Quantity<TestConditionEntries> PRODUCT_RATE = CONDITIONS.quantity(
            "productRate",
            Ranges.PRODUCT_RATE,
            TestConditionEntries::productRate,
            TestConditionEntries::withProductRate);

    /** Name of the product. */
    public static final Text<TestConditionEntries> PRODUCT = CONDITIONS.text(
            "product", "test.product", TestConditionEntries::product, TestConditionEntries::withProduct);

    /** Delivery of the product. */
    public static final Text<TestConditionEntries> DELIVERY = CONDITIONS.text(
            "delivery", "test.delivery", TestConditionEntries::delivery, TestConditionEntries::withDelivery);

    /** Measured bulk density of that delivery, kg/L or kg/m³. */
    public static final Quantity<TestConditionEntries> BULK_DENSITY = CONDITIONS.quantity(
            "bulkDensity",
            Ranges.BULK_DENSITY,
            TestConditionEntries::bulkDensity,
            TestConditionEntries::withBulkDensity);

    /** Measured median granule size of that delivery, mm. */
    public static final Quantity<TestConditionEntries> MEDIAN_SIZE = CONDITIONS.quantity(
            "medianSize",
            Ranges.MEDIAN_DIAMETER,
            TestConditionEntries::medianSize,
            TestConditionEntries::withMedianSize);

    /** Strip of the field on which the test was driven. */
    public static final Text<TestConditionEntries> STRIP =
            CONDITIONS.text("strip", "test.strip", TestConditionEntries::strip, TestConditionEntries::withStrip);

    /** Which way the middle pass was driven: left and right of the catches are seen that way. */
    public static final Text<TestConditionEntries> TRAVEL_DIRECTION = CONDITIONS.text(
            "travelDirection",
            "test.travelDirection",
            TestConditionEntries::travelDirection,
            TestConditionEntries::withTravelDirection);

    /** Whether a part of the machine was worn or replaced after the test. */
    public static final Choice<TestConditionEntries, YesNo> PART_CHANGED = CONDITIONS.choice(
            "partChanged",
            "test.partChanged",
            YesNo.class,
            TestConditionEntries::partChanged,
            TestConditionEntries::withPartChanged);

    private TestConditionPaths() {}
}
