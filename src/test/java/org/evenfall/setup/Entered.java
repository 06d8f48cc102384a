package org.evenfall.setup;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.QuantityList;

/** A setup into which entries are typed one after the other; and findings as lines that a test can compare. */
record Entered(Setup setup) {

    /** Into this setup. */
    static Entered in(Setup setup) {
        return new Entered(setup);
    }

    /** Into a setup in which nothing is typed yet. */
    static Entered inEmpty() {
        return new Entered(Setup.EMPTY);
    }

    /** A number with its unit, for example "28 m". */
    Entered with(Quantity<?> entry, String typed) {
        return with(entry.path(), typed);
    }

    /** A number with its unit, in a record that may be an item of a list. */
    <R> Entered with(Quantity<R> entry, EntryPath<R> record, String typed) {
        return with(entry.at(record), typed);
    }

    /** A number with its unit at a place. */
    Entered with(EntryPath<EnteredQuantity> path, String typed) {
        return new Entered(path.set(setup, EnteredQuantity.parse(typed)));
    }

    /** Several numbers with their units. */
    Entered withAll(QuantityList<?> entry, String... typed) {
        return new Entered(entry.path().set(setup, numbers(typed)));
    }

    /** Several numbers with their units, in a record that may be an item of a list. */
    <R> Entered withAll(QuantityList<R> entry, EntryPath<R> record, String... typed) {
        return new Entered(entry.at(record).set(setup, numbers(typed)));
    }

    /** A choice, a text or a list of rows. */
    <T> Entered with(Entry<?, T> entry, T value) {
        return new Entered(entry.path().set(setup, value));
    }

    /** A choice or a text, in a record that may be an item of a list. */
    <R, T> Entered with(Entry<R, T> entry, EntryPath<R> record, T value) {
        return new Entered(entry.at(record).set(setup, value));
    }

    /** The setup as the reading pass reads it. */
    ReadSetup read() {
        return ReadingPass.read(setup);
    }

    static List<EnteredQuantity> numbers(String... typed) {
        return Arrays.stream(typed).map(EnteredQuantity::parse).toList();
    }

    /**
     * Findings as lines: severity, step, key, pointer, arguments; the sources are in {@link FindingSourcesTest}. A figure is its value (six decimals at most), a
     * colon, the decimals that are shown, and its unit: "40.1:1 cm".
     */
    static List<String> lines(List<Finding> findings) {
        return findings.stream().map(Entered::line).toList();
    }

    private static String line(Finding finding) {
        String args = finding.args().stream().map(Entered::arg).collect(Collectors.joining(", "));
        return (finding.kind() + " " + finding.step() + " " + finding.key() + " " + finding.field() + " [" + args + "]")
                .strip();
    }

    private static String arg(Arg arg) {
        if (arg instanceof Arg.Figure figure) {
            String value = BigDecimal.valueOf(figure.value())
                    .setScale(6, RoundingMode.HALF_EVEN)
                    .stripTrailingZeros()
                    .toPlainString();
            return (value + ":" + figure.decimals() + " " + figure.unit().symbol()).strip();
        }
        if (arg instanceof Arg.Typed typed) {
            return (typed.digits() + " " + typed.unit().symbol()).strip();
        }
        if (arg instanceof Arg.Text text) {
            return text.text();
        }
        return arg instanceof Arg.Word word ? word.key() : arg.toString();
    }
}
