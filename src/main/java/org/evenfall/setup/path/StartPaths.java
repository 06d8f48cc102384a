package org.evenfall.setup.path;

import org.evenfall.finding.Step;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.StartEntries;
import org.evenfall.setup.entry.UnitSystem;

/** The job: entries of step 0. */
public final class StartPaths {

    /** The record of this step. */
    public static final Part<StartEntries> START = Part.top("start", Step.START, Setup::start, Setup::withStart);

    /** Farm, as it is printed on the card. */
    public static final Text<StartEntries> FARM = START.text(
                    "farm", "start.farm", StartEntries::farm, StartEntries::withFarm)
            .asked("missing.farm")
            .keptPrivate();

    /** Field or block, may be empty. */
    public static final Text<StartEntries> FIELD = START.text(
                    "field", "start.field", StartEntries::field, StartEntries::withField)
            .keptPrivate();

    /** Crop. */
    public static final Text<StartEntries> CROP = START.text(
                    "crop", "start.crop", StartEntries::crop, StartEntries::withCrop)
            .asked("missing.crop");

    /** Season, for example 2027. */
    public static final Text<StartEntries> SEASON =
            START.text("season", "start.season", StartEntries::season, StartEntries::withSeason);

    /** Distance between tramlines, m or ft; 9 to 60 m. */
    public static final Quantity<StartEntries> TRAMLINE_WIDTH = START.quantity(
                    "tramlineWidth",
                    Ranges.TRAMLINE_WIDTH,
                    StartEntries::tramlineWidth,
                    StartEntries::withTramlineWidth)
            .needed("missing.tramlineWidth");

    /** How the passes follow each other. */
    public static final Choice<StartEntries, DrivingPattern> DRIVING_PATTERN = START.choice(
                    "drivingPattern",
                    "start.driving",
                    DrivingPattern.class,
                    StartEntries::drivingPattern,
                    StartEntries::withDrivingPattern)
            .needed("missing.drivingPattern");

    /** Units that are offered first. */
    public static final Choice<StartEntries, UnitSystem> UNITS =
            START.choice("units", "start.units", UnitSystem.class, StartEntries::units, StartEntries::withUnits);

    private StartPaths() {}
}
