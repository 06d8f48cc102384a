package org.evenfall.setup;

import java.util.Locale;
import org.evenfall.quantity.NumberFormats;

/** Writes the numbers of drafts with a decimal point. */
final class TestNumbers {

    static final NumberWriter ENGLISH = (value, decimals) -> NumberFormats.decimals(value, decimals, Locale.ROOT);

    private TestNumbers() {}
}
