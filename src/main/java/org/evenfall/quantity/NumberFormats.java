package org.evenfall.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Locale;

/** Writes numbers with as many figures as they deserve and no grouping, so that what is printed can be typed again. */
public final class NumberFormats {

    private NumberFormats() {}

    /** Rounded half up to so many decimals, in the reader's decimal sign. A negative zero loses its sign. */
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

    /** So many decimals that the value shows the wanted count of significant figures; never fewer than none. */
    public static String significant(double value, int figures, Locale locale) {
        if (!Double.isFinite(value) || value == 0) {
            return decimals(value, 0, locale);
        }
        int magnitude = (int) Math.floor(Math.log10(Math.abs(value)));
        return decimals(value, Math.max(0, figures - 1 - magnitude), locale);
    }
}
