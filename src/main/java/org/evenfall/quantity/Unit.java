package org.evenfall.quantity;

import java.util.Arrays;
import java.util.Optional;

/**
 * A unit in which a value may be entered. {@code factor} converts one of it into the base unit of the dimension.
 *
 * <p>Factors of acre, pound, foot, inch and mile are exact. Source: NIST SP 811 (2008), Appendix B.
 */
public enum Unit {
    /** Metre. */
    M("m", Dimension.LENGTH, 1),
    /** Centimetre. */
    CM("cm", Dimension.LENGTH, 0.01),
    /** Millimetre. */
    MM("mm", Dimension.LENGTH, 0.001),
    /** Foot. */
    FT("ft", Dimension.LENGTH, 0.3048),
    /** Inch. */
    IN("in", Dimension.LENGTH, 0.0254),
    /** Size guide number: hundredths of a millimetre of the median size. */
    SGN("SGN", Dimension.LENGTH, 0.00001),
    /** Kilogram. */
    KG("kg", Dimension.MASS, 1),
    /** Gram. */
    G("g", Dimension.MASS, 0.001),
    /** Tonne. */
    T("t", Dimension.MASS, 1000),
    /** Pound (avoirdupois). */
    LB("lb", Dimension.MASS, 0.45359237),
    /** Litre. */
    L("L", Dimension.VOLUME, 1),
    /** Millilitre. */
    ML("ml", Dimension.VOLUME, 0.001),
    /** Cubic metre. */
    M3("m³", Dimension.VOLUME, 1000),
    /** Kilogram per litre. */
    KG_PER_L("kg/L", Dimension.BULK_DENSITY, 1),
    /** Kilogram per cubic metre. */
    KG_PER_M3("kg/m³", Dimension.BULK_DENSITY, 0.001),
    /** Hectare. */
    HA("ha", Dimension.AREA, 1),
    /** Acre. */
    AC("ac", Dimension.AREA, 0.40468564224),
    /** Kilogram per hectare. */
    KG_PER_HA("kg/ha", Dimension.MASS_PER_AREA, 1),
    /** Pound per acre. */
    LB_PER_AC("lb/ac", Dimension.MASS_PER_AREA, 0.45359237 / 0.40468564224),
    /** Fertiliser "units", whose basis must be asked. */
    UNITS("units", Dimension.NUTRIENT_UNITS, 1),
    /** Kilometre per hour. */
    KM_PER_H("km/h", Dimension.SPEED, 1),
    /** Metre per second. */
    M_PER_S("m/s", Dimension.SPEED, 3.6),
    /** Mile per hour. */
    MPH("mph", Dimension.SPEED, 1.609344),
    /** Second. */
    S("s", Dimension.TIME, 1),
    /** Minute. */
    MIN("min", Dimension.TIME, 60),
    /** Revolution per minute. */
    RPM("rpm", Dimension.ROTATION, 1),
    /** Degree of angle. */
    DEG("°", Dimension.ANGLE, 1),
    /** Bar. */
    BAR("bar", Dimension.PRESSURE, 1),
    /** Per cent. */
    PERCENT("%", Dimension.SHARE, 1),
    /** Kilogram per minute. */
    KG_PER_MIN("kg/min", Dimension.FLOW, 1),
    /** Pound per minute. */
    LB_PER_MIN("lb/min", Dimension.FLOW, 0.45359237),
    /** Currency per tonne. */
    PER_T("per t", Dimension.PRICE_PER_MASS, 1),
    /** Plain number. */
    NONE("", Dimension.COUNT, 1);

    private final String symbol;
    private final Dimension dimension;
    private final double factor;

    Unit(String symbol, Dimension dimension, double factor) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = factor;
    }

    /** As written after a number, for example {@code kg/ha}. Empty for a plain number. */
    public String symbol() {
        return symbol;
    }

    /** What it measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** The unit with a symbol, blanks around it and letter case apart; empty when there is none. */
    public static Optional<Unit> ofSymbol(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equalsIgnoreCase(symbol.strip()))
                .findFirst();
    }

    /**
     * Converts between two units of one dimension.
     *
     * @throws IllegalArgumentException when the dimensions differ (a programming error)
     */
    public double to(Unit target, double value) {
        if (dimension != target.dimension) {
            throw new IllegalArgumentException("cannot turn " + this + " into " + target);
        }
        return this == target ? value : value * factor / target.factor;
    }
}
