package org.evenfall.quantity;

/** What a unit measures. Units of one dimension convert by a plain factor. */
public enum Dimension {
    LENGTH,
    MASS,
    VOLUME,
    BULK_DENSITY,
    AREA,
    MASS_PER_AREA,
    /** Fertiliser "units": the basis must be asked, so they do not convert by themselves. */
    NUTRIENT_UNITS,
    SPEED,
    TIME,
    ROTATION,
    ANGLE,
    PRESSURE,
    SHARE,
    FLOW,
    PRICE_PER_MASS,
    COUNT
}
