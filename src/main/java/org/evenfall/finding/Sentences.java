package org.evenfall.finding;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.quantity.Figures;
import org.evenfall.quantity.Unit;

/**
 * Turns keys and arguments into sentences of one language. The face loads the bundle and hands it in. A key that the
 * bundle lacks is shown as itself, so that a missing sentence is seen and nothing fails.
 */
public final class Sentences {

    private final ResourceBundle bundle;
    private final Locale locale;

    public Sentences(ResourceBundle bundle, Locale locale) {
        this.bundle = bundle;
        this.locale = locale;
    }

    public Locale locale() {
        return locale;
    }

    public boolean has(String key) {
        return bundle.containsKey(key);
    }

    /** A sentence or word with its arguments in place of {0}, {1} … */
    public String text(String key, Arg... args) {
        return text(key, List.of(args));
    }

    public String text(String key, List<Arg> args) {
        if (!bundle.containsKey(key)) {
            return key;
        }
        Object[] words = args.stream().map(this::word).toArray();
        return new MessageFormat(bundle.getString(key), locale).format(words);
    }

    public String of(Finding finding) {
        return text(finding.key(), finding.args());
    }

    /** A number with its unit, a thin way for faces to write one in this language. */
    public String number(double value, int decimals, Unit unit) {
        String digits = Figures.decimals(value, decimals, locale);
        String gap = unit == Unit.DEG ? "" : "\u00a0";
        return unit == Unit.NONE ? digits : digits + gap + unit.symbol();
    }

    /** The word for a choice: key {@code choice.<EnumName>.<CONSTANT>}. */
    public String choice(Enum<?> value) {
        return text("choice." + value.getDeclaringClass().getSimpleName() + "." + value.name());
    }

    private String word(Arg arg) {
        if (arg instanceof Arg.Text text) {
            return text.text();
        }
        if (arg instanceof Arg.Word word) {
            return text(word.key());
        }
        Arg.Figure number = (Arg.Figure) arg;
        return number(number.value(), number.decimals(), number.unit());
    }
}
