package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.EnteredQuantity;

/**
 * What a tray test was driven under, as it was on that day, apart from settings, openings, wind and date, which the test has
 * itself. What is not stated counts as it is in the setup now.
 *
 * @param tramlineWidth distance between tramlines, m or ft
 * @param drivingPattern how the passes followed each other
 * @param heightOverRim height over the place where the granules land, the rim of the trays, cm, m or in
 * @param speed forward speed, km/h, m/s or mph
 * @param productRate product rate, kg/ha or lb/ac
 * @param product name of the product
 * @param delivery delivery of the product
 * @param bulkDensity measured bulk density of that delivery, kg/L or kg/m³
 * @param medianSize measured median granule size of that delivery, mm
 * @param strip strip of the field on which the test was driven
 * @param travelDirection which way the middle pass was driven, so that left and right can be found again
 * @param partChanged whether a part of the machine was worn or replaced after the test; it then proves no more
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record TestConditionEntries(
        EnteredQuantity tramlineWidth,
        DrivingPattern drivingPattern,
        EnteredQuantity heightOverRim,
        EnteredQuantity speed,
        EnteredQuantity productRate,
        String product,
        String delivery,
        EnteredQuantity bulkDensity,
        EnteredQuantity medianSize,
        String strip,
        String travelDirection,
        YesNo partChanged,
        UnknownKeys unknownKeys)
        implements TestConditionEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final TestConditionEntries EMPTY = Blank.of(TestConditionEntries.class);
}
