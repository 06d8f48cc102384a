package org.evenfall.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Locale;

/** Formats numbers without grouping, so that what is printed can be entered again. */
public final class NumberFormats {

    private NumberFormats() {}

    /**
     * A number rounded half up to a count of decimals, with the decimal sign of the locale; a dash when it is not finite. A
     * negative zero loses its sign.
     */
    public static String decimals(double value, int decimals, Locale locale) {
        if (!Double.isFinite(value)) {
            return "–";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        NumberFormat format = NumberFormat.getInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(Math.max(0, decimals));
        format.setMaximumFractionDigits(Math.max(0, decimals));
        return format.format(rounded);
    }

    /** A number with a count of significant figures; whole digits are never dropped. */
    public static String significant(double value, int figures, Locale locale) {
        if (!Double.isFinite(value) || value == 0) {
            return decimals(value, 0, locale);
        }
        int magnitude = (int) Math.floor(Math.log10(Math.abs(value)));
        return decimals(value, Math.max(0, figures - 1 - magnitude), locale);
    }
}
