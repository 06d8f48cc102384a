package org.evenfall.setup.path;

import org.evenfall.setup.entry.SettingsEntries;

/** How the machine is set: entries that the match, today's settings, each tested product, each bucket test and each tray test have. */
public final class SettingsPaths {

    /** How the machine is set, wherever a setup has it. */
    public static final Part<SettingsEntries> SETTINGS = MatchPaths.SETTINGS
            .or(TodayPaths.SETTINGS)
            .or(MatchPaths.TESTED_SETTINGS.part())
            .or(RatePaths.BUCKET_SETTINGS.part())
            .or(TrayPaths.TEST_SETTINGS.part());

    /** Lever label to the number it is set to. */
    public static final QuantityMap<SettingsEntries> LEVERS =
            SETTINGS.byLever("levers", Ranges.LEVER_VALUE, SettingsEntries::levers, SettingsEntries::withLevers);

    /** PTO speed, rpm. */
    public static final Quantity<SettingsEntries> PTO_SPEED =
            SETTINGS.quantity("ptoSpeed", Ranges.PTO_SPEED, SettingsEntries::ptoSpeed, SettingsEntries::withPtoSpeed);

    /** Height over the crop, cm, m or in. */
    public static final Quantity<SettingsEntries> HEIGHT_OVER_CROP = SETTINGS.quantity(
            "heightOverCrop",
            Ranges.HEIGHT_OVER_CROP,
            SettingsEntries::heightOverCrop,
            SettingsEntries::withHeightOverCrop);

    /** Tilt, °; positive: rear higher. */
    public static final Quantity<SettingsEntries> TILT =
            SETTINGS.quantity("tilt", Ranges.TILT, SettingsEntries::tilt, SettingsEntries::withTilt);

    private SettingsPaths() {}
}
