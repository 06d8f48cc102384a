package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;

/**
 * Every kind of entry with its limits, in one place: the assessment reads by it, the wizard shows its units and hints,
 * the command names its limits. Limits marked usual are common practice, no source, unless science says otherwise.
 */
public final class Fields {

    public static final FieldSpec TRAMLINE_WIDTH =
            new FieldSpec("field.tramlineWidth", Step.START, List.of(Unit.M, Unit.FT), 9, 60, 12, 48, 0);
    public static final FieldSpec WORKING_WIDTH =
            new FieldSpec("field.workingWidth", Step.START, List.of(Unit.M, Unit.FT), 6, 60, 9, 54, 0);
    public static final FieldSpec DISC_RADIUS = new FieldSpec(
            "field.discRadius", Step.START, List.of(Unit.CM, Unit.MM, Unit.M, Unit.IN), 15, 80, 20, 60, 0);
    public static final FieldSpec DISC_SPEED =
            new FieldSpec("field.discSpeed", Step.START, List.of(Unit.RPM), 200, 2500, 500, 1300, 0);
    public static final FieldSpec PTO_LIMIT =
            new FieldSpec("field.ptoLimit", Step.START, List.of(Unit.RPM), 200, 1200, 400, 1000, 0);
    public static final FieldSpec OUTLETS =
            new FieldSpec("field.outlets", Step.START, List.of(Unit.NONE), 1, 4, 2, 2, 0);
    public static final FieldSpec LEVER_VALUE =
            new FieldSpec("field.leverValue", Step.START, List.of(Unit.NONE), -1000, 10000, -1000, 10000, 1);
    public static final FieldSpec LEVER_STEP =
            new FieldSpec("field.leverStep", Step.START, List.of(Unit.NONE), 0.001, 1000, 0.001, 1000, 1);
    public static final FieldSpec OPENING =
            new FieldSpec("field.opening", Step.START, List.of(Unit.NONE), 0, 1000, 0, 1000, 1);
    public static final FieldSpec FLOW =
            new FieldSpec("field.flow", Step.START, List.of(Unit.KG_PER_MIN, Unit.LB_PER_MIN), 0.1, 1000, 1, 400, 0);
    public static final FieldSpec NITROGEN_SHARE =
            new FieldSpec("field.nitrogenShare", Step.PRODUCT, List.of(Unit.PERCENT), 1, 60, 10, 46.6, 1);
    public static final FieldSpec BAGS =
            new FieldSpec("field.bags", Step.PRODUCT, List.of(Unit.NONE), 1, 10000, 1, 500, 0);
    public static final FieldSpec CONTAINER_VOLUME =
            new FieldSpec("field.containerVolume", Step.PRODUCT, List.of(Unit.L, Unit.ML), 0.1, 50, 0.5, 10, 2);
    public static final FieldSpec CONTAINER_EMPTY =
            new FieldSpec("field.containerEmpty", Step.PRODUCT, List.of(Unit.G, Unit.KG), 0, 20000, 10, 2000, 0);
    public static final FieldSpec CONTAINER_FULL =
            new FieldSpec("field.containerFull", Step.PRODUCT, List.of(Unit.G, Unit.KG), 1, 100000, 100, 15000, 0);
    public static final FieldSpec BULK_DENSITY = new FieldSpec(
            "field.bulkDensity", Step.PRODUCT, List.of(Unit.KG_PER_L, Unit.KG_PER_M3), 0.4, 1.6, 0.65, 1.15, 2);
    public static final FieldSpec APERTURE =
            new FieldSpec("field.aperture", Step.PRODUCT, List.of(Unit.MM, Unit.IN), 0.1, 20, 0.5, 8, 2);
    public static final FieldSpec SIEVE_MASS =
            new FieldSpec("field.sieveMass", Step.PRODUCT, List.of(Unit.G, Unit.KG), 0, 20000, 0, 2000, 0);
    public static final FieldSpec SIEVE_SHARE =
            new FieldSpec("field.sieveShare", Step.PRODUCT, List.of(Unit.PERCENT), 0, 100, 0, 100, 0);
    public static final FieldSpec SIEVE_HEIGHT =
            new FieldSpec("field.sieveHeight", Step.PRODUCT, List.of(Unit.MM, Unit.CM), 0, 1000, 0, 300, 0);
    public static final FieldSpec MEDIAN_DIAMETER =
            new FieldSpec("field.medianDiameter", Step.MATCH, List.of(Unit.MM), 0.5, 8, 1, 5, 2);
    public static final FieldSpec CV = new FieldSpec("field.cv", Step.MATCH, List.of(Unit.PERCENT), 0, 100, 0, 30, 0);
    public static final FieldSpec VANE_LENGTH =
            new FieldSpec("field.vaneLength", Step.MACHINE, List.of(Unit.MM, Unit.CM, Unit.IN), 30, 900, 100, 500, 0);
    public static final FieldSpec FRAME_HEIGHT =
            new FieldSpec("field.frameHeight", Step.MACHINE, List.of(Unit.CM, Unit.M, Unit.IN), 20, 300, 40, 180, 0);
    public static final FieldSpec TILT =
            new FieldSpec("field.tilt", Step.MACHINE, List.of(Unit.DEG), -20, 20, -5, 8, 0);
    public static final FieldSpec TYRE_PRESSURE =
            new FieldSpec("field.tyrePressure", Step.MACHINE, List.of(Unit.BAR), 0.3, 6, 0.6, 3.5, 1);
    public static final FieldSpec PTO_SPEED =
            new FieldSpec("field.ptoSpeed", Step.MACHINE, List.of(Unit.RPM), 200, 1200, 400, 1000, 0);
    public static final FieldSpec CROP_HEIGHT =
            new FieldSpec("field.cropHeight", Step.HEIGHT, List.of(Unit.CM, Unit.M, Unit.IN), 0, 250, 0, 120, 0);
    public static final FieldSpec GROWTH =
            new FieldSpec("field.growth", Step.HEIGHT, List.of(Unit.CM, Unit.M, Unit.IN), 0, 100, 0, 30, 0);
    public static final FieldSpec HEIGHT_OVER_CROP =
            new FieldSpec("field.heightOverCrop", Step.HEIGHT, List.of(Unit.CM, Unit.M, Unit.IN), 10, 200, 50, 110, 0);
    public static final FieldSpec HITCH_HEIGHT =
            new FieldSpec("field.hitchHeight", Step.HEIGHT, List.of(Unit.CM, Unit.M, Unit.IN), 20, 350, 50, 220, 0);
    public static final FieldSpec CHAIN_POINT =
            new FieldSpec("field.chainPoint", Step.HEIGHT, List.of(Unit.CM, Unit.M, Unit.IN), -100, 200, -20, 100, 0);
    public static final FieldSpec NITROGEN_RATE = new FieldSpec(
            "field.nitrogenRate", Step.RATE, List.of(Unit.KG_PER_HA, Unit.LB_PER_AC, Unit.UNITS), 5, 400, 20, 150, 0);
    public static final FieldSpec PRODUCT_RATE = new FieldSpec(
            "field.productRate", Step.RATE, List.of(Unit.KG_PER_HA, Unit.LB_PER_AC), 10, 1500, 40, 400, 0);
    public static final FieldSpec SPEED =
            new FieldSpec("field.speed", Step.RATE, List.of(Unit.KM_PER_H, Unit.M_PER_S, Unit.MPH), 2, 30, 6, 18, 1);
    public static final FieldSpec AREA =
            new FieldSpec("field.area", Step.RATE, List.of(Unit.HA, Unit.AC), 0.01, 20000, 0.5, 2000, 1);
    public static final FieldSpec BAG_MASS =
            new FieldSpec("field.bagMass", Step.RATE, List.of(Unit.KG, Unit.LB, Unit.T), 5, 2000, 25, 1000, 0);
    public static final FieldSpec HOPPER_VOLUME =
            new FieldSpec("field.hopperVolume", Step.RATE, List.of(Unit.L, Unit.M3), 50, 20000, 300, 5000, 0);
    public static final FieldSpec BUCKET_VOLUME =
            new FieldSpec("field.bucketVolume", Step.RATE, List.of(Unit.L), 1, 2000, 5, 1000, 0);
    public static final FieldSpec PRICE =
            new FieldSpec("field.price", Step.RATE, List.of(Unit.PER_T), 1, 10000, 100, 1500, 0);
    public static final FieldSpec EFFECTIVENESS =
            new FieldSpec("field.effectiveness", Step.RATE, List.of(Unit.PERCENT), 10, 120, 70, 100, 0);
    public static final FieldSpec TOLERANCE =
            new FieldSpec("field.tolerance", Step.RATE, List.of(Unit.PERCENT), 1, 20, 2, 10, 0);
    public static final FieldSpec DISTANCE =
            new FieldSpec("field.distance", Step.RATE, List.of(Unit.M, Unit.FT), 10, 2000, 50, 500, 0);
    public static final FieldSpec RUN_TIME =
            new FieldSpec("field.runTime", Step.RATE, List.of(Unit.S, Unit.MIN), 2, 3600, 10, 600, 1);
    public static final FieldSpec BUCKET_TIME =
            new FieldSpec("field.bucketTime", Step.RATE, List.of(Unit.S, Unit.MIN), 3, 600, 10, 120, 0);
    public static final FieldSpec BUCKET_EMPTY =
            new FieldSpec("field.bucketEmpty", Step.RATE, List.of(Unit.KG, Unit.G, Unit.LB), 0, 200, 0, 20, 1);
    public static final FieldSpec BUCKET_MASS =
            new FieldSpec("field.bucketMass", Step.RATE, List.of(Unit.KG, Unit.G, Unit.LB), 0.05, 2000, 1, 600, 1);
    public static final FieldSpec HOPPER_USED =
            new FieldSpec("field.hopperUsed", Step.RATE, List.of(Unit.KG, Unit.T, Unit.LB), 1, 20000, 50, 5000, 0);
    public static final FieldSpec TRAY_SIDE =
            new FieldSpec("field.traySide", Step.TRAYS, List.of(Unit.CM, Unit.M, Unit.IN), 10, 200, 20, 100, 0);
    public static final FieldSpec TRAY_COUNT =
            new FieldSpec("field.trayCount", Step.TRAYS, List.of(Unit.NONE), 5, 33, 7, 7, 0);
    public static final FieldSpec TRAY_POSITION =
            new FieldSpec("field.trayPosition", Step.TRAYS, List.of(Unit.M, Unit.FT), -60, 60, -30, 30, 1);
    public static final FieldSpec TUBE_BORE =
            new FieldSpec("field.tubeBore", Step.TRAYS, List.of(Unit.MM, Unit.CM, Unit.IN), 4, 100, 8, 60, 0);
    public static final FieldSpec READING_STEP = new FieldSpec(
            "field.readingStep", Step.TRAYS, List.of(Unit.G, Unit.ML, Unit.MM, Unit.CM), 0.001, 50, 0.01, 10, 2);
    public static final FieldSpec CATCH_MASS =
            new FieldSpec("field.catchMass", Step.TRAYS, List.of(Unit.G, Unit.KG), 0, 5000, 0.5, 500, 1);
    public static final FieldSpec CATCH_VOLUME =
            new FieldSpec("field.catchVolume", Step.TRAYS, List.of(Unit.ML, Unit.L), 0, 10000, 0.5, 1000, 1);
    public static final FieldSpec CATCH_HEIGHT =
            new FieldSpec("field.catchHeight", Step.TRAYS, List.of(Unit.MM, Unit.CM), 0, 1500, 1, 500, 0);
    public static final FieldSpec RUNS = new FieldSpec("field.runs", Step.TRAYS, List.of(Unit.NONE), 1, 20, 1, 6, 0);
    public static final FieldSpec WIND =
            new FieldSpec("field.wind", Step.TRAYS, List.of(Unit.M_PER_S, Unit.KM_PER_H, Unit.MPH), 0, 30, 0, 6, 1);
    public static final FieldSpec WIND_LIMIT = new FieldSpec(
            "field.windLimit", Step.TRAYS, List.of(Unit.M_PER_S, Unit.KM_PER_H, Unit.MPH), 0, 10, 1, 5, 1);
    public static final FieldSpec TRACK =
            new FieldSpec("field.track", Step.TRAYS, List.of(Unit.M, Unit.CM, Unit.FT), 0.8, 4, 1.4, 2.4, 2);
    public static final FieldSpec TYRE =
            new FieldSpec("field.tyre", Step.TRAYS, List.of(Unit.CM, Unit.MM, Unit.IN), 10, 200, 25, 90, 0);
    public static final FieldSpec SWITCH_DISTANCE =
            new FieldSpec("field.switchDistance", Step.TRAYS, List.of(Unit.M, Unit.FT), -50, 100, -20, 60, 0);

    private Fields() {}
}
