package org.evenfall.quantity;

/** What a unit measures. Units of one dimension convert by a plain factor. */
public enum Dimension {
    /** Base unit m. */
    LENGTH,
    /** Base unit kg. */
    MASS,
    /** Base unit L. */
    VOLUME,
    /** Base unit kg/L. */
    BULK_DENSITY,
    /** Base unit ha. */
    AREA,
    /** Base unit kg/ha. */
    MASS_PER_AREA,
    /** Fertiliser "units": the basis must be asked, so they do not convert by themselves. */
    NUTRIENT_UNITS,
    /** Base unit km/h. */
    SPEED,
    /** Base unit s. */
    TIME,
    /** Base unit rpm. */
    ROTATION,
    /** Base unit degree. */
    ANGLE,
    /** Base unit bar. */
    PRESSURE,
    /** Base unit %. */
    SHARE,
    /** Base unit kg/min. */
    FLOW,
    /** Base unit: currency per tonne. */
    PRICE_PER_MASS,
    /** A plain number. */
    COUNT
}
