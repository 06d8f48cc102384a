package org.evenfall.finding;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Turns keys and arguments into sentences of one language. The face loads the bundle and hands it in. A key that the
 * bundle lacks is shown as itself, so that a missing sentence is seen and nothing fails.
 */
public final class Sentences {

    private final ResourceBundle bundle;
    private final Locale locale;
    private final @Nullable Sentences rest;

    public Sentences(ResourceBundle bundle, Locale locale) {
        this(bundle, locale, null);
    }

    private Sentences(ResourceBundle bundle, Locale locale, @Nullable Sentences rest) {
        this.bundle = bundle;
        this.locale = locale;
        this.rest = rest;
    }

    /** Another language over this one: what its bundle lacks is said in this one. */
    public Sentences in(ResourceBundle other, Locale otherLocale) {
        return new Sentences(other, otherLocale, this);
    }

    public Locale locale() {
        return locale;
    }

    public boolean has(String key) {
        return pattern(key) != null;
    }

    private @Nullable String pattern(String key) {
        if (bundle.containsKey(key)) {
            return bundle.getString(key);
        }
        return rest == null ? null : rest.pattern(key);
    }

    /** A sentence or word with its arguments in place of {0}, {1} … */
    public String text(String key, Arg... args) {
        return text(key, List.of(args));
    }

    public String text(String key, List<Arg> args) {
        String pattern = pattern(key);
        if (pattern == null) {
            return key;
        }
        Object[] words = args.stream().map(this::word).toArray();
        return new MessageFormat(pattern, locale).format(words);
    }

    public String of(Finding finding) {
        return text(finding.key(), finding.args());
    }

    /** A number with its unit, a thin way for faces to write one in this language. */
    public String number(double value, int decimals, Unit unit) {
        String digits = NumberFormats.decimals(value, decimals, locale);
        String gap = unit == Unit.DEG ? "" : "\u00a0";
        return unit == Unit.NONE ? digits : digits + gap + unit.symbol();
    }

    /** The word for a choice: key {@code choice.<EnumName>.<CONSTANT>}. */
    public String choice(Enum<?> value) {
        return text("choice." + value.getDeclaringClass().getSimpleName() + "." + value.name());
    }

    /** An argument as it is written in this language. */
    public String word(Arg arg) {
        if (arg instanceof Arg.Text text) {
            return text.text();
        }
        if (arg instanceof Arg.Word word) {
            return text(word.key());
        }
        if (arg instanceof Arg.Span span) {
            return Math.round(span.low()) + "\u2013" + Math.round(span.high());
        }
        if (arg instanceof Arg.Series series) {
            return series.args().stream().map(this::word).collect(Collectors.joining(", "));
        }
        Arg.Figure number = (Arg.Figure) arg;
        return number(number.value(), number.decimals(), number.unit());
    }
}
