package org.evenfall.finding;

import java.text.MessageFormat;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Sentences of one language from keys and arguments. The face loads the bundle and passes it in. A key that the bundle
 * lacks is shown as itself, so that a missing sentence is visible and nothing fails.
 */
public final class Sentences {

    private static final char MINUS = '\u2212';
    private static final char NO_BREAK = '\u00a0';

    private final ResourceBundle bundle;
    private final Locale locale;
    private final @Nullable Sentences fallback;

    /** Sentences of a bundle, with numbers in the format of a locale. */
    public Sentences(ResourceBundle bundle, Locale locale) {
        this(bundle, locale, null);
    }

    private Sentences(ResourceBundle bundle, Locale locale, @Nullable Sentences fallback) {
        this.bundle = bundle;
        this.locale = locale;
        this.fallback = fallback;
    }

    /** Another language that falls back on this one where its bundle lacks a key. */
    public Sentences in(ResourceBundle other, Locale otherLocale) {
        return new Sentences(other, otherLocale, this);
    }

    /** The locale of the numbers. */
    public Locale locale() {
        return locale;
    }

    /** Whether a sentence exists for a key, fallbacks included. */
    public boolean has(String key) {
        return pattern(key) != null;
    }

    private @Nullable String pattern(String key) {
        if (bundle.containsKey(key)) {
            return bundle.getString(key);
        }
        return fallback == null ? null : fallback.pattern(key);
    }

    /** The sentence or word of a key with its arguments in place of {0}, {1} …; the key itself when there is none. */
    public String text(String key, Arg... args) {
        return text(key, List.of(args));
    }

    /** The same with the arguments in a list. */
    public String text(String key, List<Arg> args) {
        String pattern = pattern(key);
        if (pattern == null) {
            return key;
        }
        Object[] words = args.stream().map(this::word).toArray();
        return new MessageFormat(pattern, locale).format(words);
    }

    /** The sentence of a finding. */
    public String of(Finding finding) {
        return text(finding.key(), finding.args());
    }

    /** A number with a count of decimals and its unit, in this language and with a true minus. */
    public String number(double value, int decimals, Unit unit) {
        return withUnit(NumberFormats.decimals(value, decimals, locale).replace('-', MINUS), unit);
    }

    /** A quantity as it was typed, with its unit in this language; a unit typed behind it goes first. */
    public String typed(EnteredQuantity typed) {
        return word(Arg.typed(typed));
    }

    /** The digits and the unit, which stay on one line; no blank before a degree sign. */
    private String withUnit(String digits, Unit unit) {
        String gap = unit == Unit.DEG ? "" : "\u00a0";
        return unit == Unit.NONE ? digits : digits + gap + unit(unit);
    }

    /** A unit in this language, key {@code unit.<CONSTANT>}; its symbol where all languages write the same. */
    public String unit(Unit unit) {
        String key = "unit." + unit.name();
        return has(key) ? text(key) : unit.symbol();
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
        if (arg instanceof Arg.Typed typed) {
            return withUnit(typed.digits(), typed.unit());
        }
        if (arg instanceof Arg.Day day) {
            return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                    .withLocale(locale)
                    .format(day.date())
                    .replace(' ', NO_BREAK);
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
