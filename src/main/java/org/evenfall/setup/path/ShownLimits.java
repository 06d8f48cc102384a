package org.evenfall.setup.path;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.Unit;

/**
 * Limits as a person reads them, without needless decimals. They are rounded inwards, so that both numbers shown are
 * within the limits.
 *
 * @param low the lowest, without its unit
 * @param high the highest, with its unit
 */
public record ShownLimits(Arg.Figure low, Arg.Figure high) {

    /** Assumption: a limit may be rounded by so much of itself; nobody types nearer to a limit on purpose. */
    private static final BigDecimal ROUNDED_SHARE = new BigDecimal("0.02");

    /** Figures that are left when the rounding of a unit's conversion is taken out. */
    private static final MathContext WITHOUT_CONVERSION_ERROR = new MathContext(9);

    static ShownLimits of(double low, double high, Unit unit) {
        return new ShownLimits(rounded(low, RoundingMode.CEILING, Unit.NONE), rounded(high, RoundingMode.FLOOR, unit));
    }

    /** With the fewest decimals that leave it nearly the same. */
    private static Arg.Figure rounded(double limit, RoundingMode inwards, Unit unit) {
        BigDecimal exact = BigDecimal.valueOf(limit).round(WITHOUT_CONVERSION_ERROR);
        BigDecimal most = exact.abs().multiply(ROUNDED_SHARE);
        int decimals = 0;
        BigDecimal rounded = exact.setScale(decimals, inwards);
        while (rounded.subtract(exact).abs().compareTo(most) > 0) {
            decimals++;
            rounded = exact.setScale(decimals, inwards);
        }
        return new Arg.Figure(rounded.doubleValue(), decimals, unit);
    }
}
