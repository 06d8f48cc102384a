package org.evenfall.setup.path;

import static org.evenfall.quantity.Unit.*;

import java.util.List;
import org.evenfall.quantity.Unit;

/**
 * What numbers each kind of entry takes: units, possible and usual limits, all in the core unit.
 *
 * <p>Common practice: the usual limits, unless a source is named. Assumption: the possible limits, wide enough that no
 * real machine or product is refused.
 */
final class Ranges {

    static final Range TRAMLINE_WIDTH = range("field.tramlineWidth", M, List.of(M, FT), 9, 60, 12, 48);

    static final Range WORKING_WIDTH = range("field.workingWidth", M, List.of(M, FT), 6, 60, 9, 54);

    static final Range DISC_DIAMETER = range("field.discDiameter", M, List.of(CM, MM, M, IN), 0.3, 1.6, 0.4, 1.2);

    static final Range DISC_SPEED = range("field.discSpeed", RPM, List.of(RPM), 200, 2500, 500, 1300);

    static final Range PTO_LIMIT = range("field.ptoLimit", RPM, List.of(RPM), 200, 1200, 400, 1000);

    static final Range OUTLETS = range("field.outlets", NONE, List.of(NONE), 1, 4, 2, 2);

    static final Range LEVER_VALUE = range("field.leverValue", NONE, List.of(NONE), -1000, 10000, -1000, 10000);

    static final Range LEVER_STEP = range("field.leverStep", NONE, List.of(NONE), 0.001, 1000, 0.001, 1000);

    static final Range OPENING = range("field.opening", NONE, List.of(NONE), 0, 1000, 0, 1000);

    /** Factor of a terminal. Assumption: terminals differ in what it means, so the limits are wide. */
    static final Range FACTOR = range("field.factor", NONE, List.of(NONE), 0.001, 1000, 0.001, 1000);

    static final Range FLOW = range("field.flow", KG_PER_MIN, List.of(KG_PER_MIN, LB_PER_MIN), 0.1, 1000, 1, 400);

    static final Range NITROGEN_SHARE = range("field.nitrogenShare", PERCENT, List.of(PERCENT), 1, 60, 10, 46.6);

    static final Range BAGS = range("field.bags", NONE, List.of(NONE), 1, 10000, 1, 500);

    static final Range CONTAINER_VOLUME = range("field.containerVolume", L, List.of(L, ML), 0.1, 50, 0.5, 10);

    static final Range CONTAINER_EMPTY = range("field.containerEmpty", KG, List.of(G, KG), 0, 20, 0.01, 2);

    static final Range CONTAINER_FULL = range("field.containerFull", KG, List.of(G, KG), 0.001, 100, 0.1, 15);

    static final Range BULK_DENSITY =
            range("field.bulkDensity", KG_PER_L, List.of(KG_PER_L, KG_PER_M3), 0.4, 1.6, 0.65, 1.15);

    static final Range APERTURE = range("field.aperture", MM, List.of(MM, IN), 0.1, 20, 0.5, 8);

    static final Range SIEVE_MASS = range("field.sieveMass", G, List.of(G, KG), 0, 20000, 0, 2000);

    static final Range SIEVE_SHARE = range("field.sieveShare", PERCENT, List.of(PERCENT), 0, 100, 0, 100);

    static final Range SIEVE_HEIGHT = range("field.sieveHeight", MM, List.of(MM, CM), 0, 1000, 0, 300);

    static final Range MEDIAN_DIAMETER = range("field.medianDiameter", MM, List.of(MM, SGN), 0.5, 8, 1, 5);

    static final Range CV = range("field.cv", PERCENT, List.of(PERCENT), 0, 100, 0, 30);

    static final Range VANE_LENGTH = range("field.vaneLength", M, List.of(MM, CM, IN), 0.03, 0.9, 0.1, 0.5);

    static final Range FRAME_HEIGHT = range("field.frameHeight", M, List.of(CM, M, IN), 0.2, 3, 0.4, 1.8);

    static final Range TILT = range("field.tilt", DEG, List.of(DEG), -20, 20, -5, 8);

    static final Range TYRE_PRESSURE = range("field.tyrePressure", BAR, List.of(BAR), 0.3, 6, 0.6, 3.5);

    static final Range PTO_SPEED = range("field.ptoSpeed", RPM, List.of(RPM), 200, 1200, 400, 1000);

    /** Speed of the tractor's engine. Assumption: diesel tractors run between these. */
    static final Range ENGINE_SPEED = range("field.engineSpeed", RPM, List.of(RPM), 500, 4000, 1000, 2600);

    static final Range CROP_HEIGHT = range("field.cropHeight", M, List.of(CM, M, IN), 0, 2.5, 0, 1.2);

    static final Range GROWTH = range("field.growth", M, List.of(CM, M, IN), 0, 1, 0, 0.3);

    static final Range HEIGHT_OVER_CROP = range("field.heightOverCrop", M, List.of(CM, M, IN), 0.1, 2, 0.5, 1.1);

    static final Range HITCH_HEIGHT = range("field.hitchHeight", M, List.of(CM, M, IN), 0.2, 3.5, 0.5, 2.2);

    static final Range CHAIN_POINT = range("field.chainPoint", M, List.of(CM, M, IN), -1, 2, -0.2, 1);

    static final Range NITROGEN_RATE =
            range("field.nitrogenRate", KG_PER_HA, List.of(KG_PER_HA, LB_PER_AC), 5, 400, 20, 150);

    /** Fertiliser units an acre; what a unit is must be asked. */
    static final Range NITROGEN_UNITS = range("field.nitrogenRate", UNITS, List.of(UNITS), 5, 400, 20, 150);

    static final Range PRODUCT_RATE =
            range("field.productRate", KG_PER_HA, List.of(KG_PER_HA, LB_PER_AC), 10, 1500, 40, 400);

    static final Range SPEED = range("field.speed", KM_PER_H, List.of(KM_PER_H, M_PER_S, MPH), 2, 30, 6, 18);

    static final Range AREA = range("field.area", HA, List.of(HA, AC), 0.01, 20000, 0.5, 2000);

    static final Range BAG_MASS = range("field.bagMass", KG, List.of(KG, LB, T), 5, 2000, 25, 1000);

    static final Range HOPPER_VOLUME = range("field.hopperVolume", L, List.of(L, M3), 50, 20000, 300, 5000);

    static final Range BUCKET_VOLUME = range("field.bucketVolume", L, List.of(L), 1, 2000, 5, 1000);

    static final Range PRICE = range("field.price", PER_T, List.of(PER_T), 1, 10000, 100, 1500);

    /** No nitrogen counts more than once, so that above 100 % is refused. */
    static final Range EFFECTIVENESS = range("field.effectiveness", PERCENT, List.of(PERCENT), 10, 100, 70, 100);

    static final Range TOLERANCE = range("field.tolerance", PERCENT, List.of(PERCENT), 1, 20, 2, 10);

    static final Range DISTANCE = range("field.distance", M, List.of(M, FT), 10, 2000, 50, 500);

    static final Range RUN_TIME = range("field.runTime", S, List.of(S, MIN), 2, 3600, 10, 600);

    static final Range BUCKET_TIME = range("field.bucketTime", S, List.of(S, MIN), 3, 600, 10, 120);

    static final Range KNOWN_WEIGHT = range("field.knownWeight", KG, List.of(KG, T, LB), 1, 3000, 20, 1000);

    static final Range THROUGH_TIME = range("field.throughTime", S, List.of(S, MIN), 3, 3600, 15, 900);

    static final Range BUCKET_EMPTY = range("field.bucketEmpty", KG, List.of(KG, G, LB), 0, 200, 0, 20);

    static final Range BUCKET_MASS = range("field.bucketMass", KG, List.of(KG, G, LB), 0.05, 2000, 1, 600);

    static final Range HOPPER_USED = range("field.hopperUsed", KG, List.of(KG, T, LB), 1, 20000, 50, 5000);

    /** Product drawn for one field. Assumption: from the strips of a tray test to the largest fields there are. */
    static final Range PRODUCT_DRAWN = range("field.productDrawn", KG, List.of(KG, T, LB), 1, 2_000_000, 50, 100_000);

    static final Range TRAY_SIDE = range("field.traySide", M, List.of(CM, M, IN), 0.1, 2, 0.2, 1);

    static final Range TRAY_COUNT = range("field.trayCount", NONE, List.of(NONE), 5, 33, 7, 13);

    static final Range TRAY_POSITION = range("field.trayPosition", M, List.of(M, FT), -60, 60, -30, 30);

    static final Range TUBE_BORE = range("field.tubeBore", MM, List.of(MM, CM, IN), 4, 100, 8, 60);

    static final Range READING_STEP_MASS = range("field.readingStep", G, List.of(G), 0.001, 50, 0.01, 10);

    static final Range READING_STEP_VOLUME = range("field.readingStep", ML, List.of(ML), 0.001, 50, 0.01, 10);

    static final Range READING_STEP_HEIGHT = range("field.readingStep", MM, List.of(MM, CM), 0.001, 50, 0.01, 10);

    /** Below 1000 g, so that three decimals are no thousands group; 1 m² at 500 kg/ha catches 50 g a run. */
    static final Range CATCH_MASS = range("field.catchMass", G, List.of(G, KG), 0, 999, 0.5, 500);

    static final Range CATCH_VOLUME = range("field.catchVolume", ML, List.of(ML, L), 0, 10000, 0.5, 1000);

    static final Range CATCH_HEIGHT = range("field.catchHeight", MM, List.of(MM, CM), 0, 1500, 1, 500);

    static final Range RUNS = range("field.runs", NONE, List.of(NONE), 1, 20, 1, 6);

    static final Range WIND = range("field.wind", M_PER_S, List.of(M_PER_S, KM_PER_H, MPH), 0, 30, 0, 6);

    static final Range WIND_LIMIT = range("field.windLimit", M_PER_S, List.of(M_PER_S, KM_PER_H, MPH), 0, 10, 1, 5);

    static final Range TRACK = range("field.track", M, List.of(M, CM, FT), 0.8, 4, 1.4, 2.4);

    static final Range TYRE = range("field.tyre", M, List.of(CM, MM, IN), 0.1, 2, 0.25, 0.9);

    static final Range SWITCH_DISTANCE = range("field.switchDistance", M, List.of(M, FT), -50, 100, -20, 60);

    private Ranges() {}

    private static Range range(
            String nameKey, Unit core, List<Unit> units, double low, double high, double usualLow, double usualHigh) {
        return new Range(nameKey, core, units, new Limits(low, high), new Limits(usualLow, usualHigh));
    }
}
