package org.evenfall.quantity;

import java.util.Arrays;
import java.util.Optional;

/**
 * A unit a value may be typed in. {@code factor} turns one of it into the dimension's base unit.
 *
 * <p>Factors of acre, pound, foot, inch and mile are exact: NIST Special Publication 811 (2008), Appendix B.
 */
public enum Unit {
    M("m", Dimension.LENGTH, 1),
    CM("cm", Dimension.LENGTH, 0.01),
    MM("mm", Dimension.LENGTH, 0.001),
    FT("ft", Dimension.LENGTH, 0.3048),
    IN("in", Dimension.LENGTH, 0.0254),
    KG("kg", Dimension.MASS, 1),
    G("g", Dimension.MASS, 0.001),
    T("t", Dimension.MASS, 1000),
    LB("lb", Dimension.MASS, 0.45359237),
    L("L", Dimension.VOLUME, 1),
    ML("ml", Dimension.VOLUME, 0.001),
    M3("m³", Dimension.VOLUME, 1000),
    KG_PER_L("kg/L", Dimension.BULK_DENSITY, 1),
    KG_PER_M3("kg/m³", Dimension.BULK_DENSITY, 0.001),
    HA("ha", Dimension.AREA, 1),
    AC("ac", Dimension.AREA, 0.40468564224),
    KG_PER_HA("kg/ha", Dimension.MASS_PER_AREA, 1),
    LB_PER_AC("lb/ac", Dimension.MASS_PER_AREA, 0.45359237 / 0.40468564224),
    UNITS("units", Dimension.NUTRIENT_UNITS, 1),
    KM_PER_H("km/h", Dimension.SPEED, 1),
    M_PER_S("m/s", Dimension.SPEED, 3.6),
    MPH("mph", Dimension.SPEED, 1.609344),
    S("s", Dimension.TIME, 1),
    MIN("min", Dimension.TIME, 60),
    RPM("rpm", Dimension.ROTATION, 1),
    DEG("°", Dimension.ANGLE, 1),
    BAR("bar", Dimension.PRESSURE, 1),
    PERCENT("%", Dimension.SHARE, 1),
    KG_PER_MIN("kg/min", Dimension.FLOW, 1),
    LB_PER_MIN("lb/min", Dimension.FLOW, 0.45359237),
    PER_T("per t", Dimension.PRICE_PER_MASS, 1),
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

    public Dimension dimension() {
        return dimension;
    }

    /** The unit written so, whatever the case of "l" and "L". */
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
