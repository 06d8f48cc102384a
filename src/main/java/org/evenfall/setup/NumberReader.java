package org.evenfall.setup;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberAndWord;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Measured;
import org.evenfall.setup.path.Range;
import org.jspecify.annotations.Nullable;

/** Turns one typed quantity into a number in its core unit, or into a finding that says why it cannot be used. */
final class NumberReader {

    /** A number with a decimal sign, to show how one is typed. */
    private static final double EXAMPLE = 12.5;

    private final Consumer<Finding> findings;

    /** @param findings takes what is to be reported */
    NumberReader(Consumer<Finding> findings) {
        this.findings = findings;
    }

    /** The sum of several amounts with a plus between them; null when one of them cannot be used. */
    @Nullable
    Double sum(EnteredQuantity typed, Range range, EntryPath<EnteredQuantity> path) {
        double sum = 0;
        String[] amounts = typed.text().split(Pattern.quote(Measured.PLUS), -1);
        for (String amount : amounts) {
            if (amounts.length > 1 && amount.isBlank()) {
                report(
                        path,
                        Finding.missing(
                                path.step(),
                                "entry.sumOpen",
                                Arg.text(typed.text().strip()),
                                Arg.word(range.nameKey())));
                return null;
            }
            Double value = read(typed.withText(amount.strip()), range, path);
            if (value == null) {
                return null;
            }
            sum += value;
        }
        return sum;
    }

    /** The value in the core unit; null when nothing was typed or when it cannot be used, with a finding for the latter. */
    @Nullable
    Double read(EnteredQuantity given, Range range, EntryPath<?> path) {
        EnteredQuantity typed = withUnitFromText(given, range);
        NumberReading reading = NumberText.read(typed.text());
        if (reading instanceof NumberReading.Empty) {
            return null;
        }
        if (reading instanceof NumberReading.NotANumber) {
            report(path, notANumber(typed, range, path));
            return null;
        }
        Unit unit = typed.unit() == Unit.NONE ? range.shown() : typed.unit();
        if (reading instanceof NumberReading.Ambiguous twice && onlyDecimalIsPossible(twice, unit, range)) {
            reading = new NumberReading.Value(twice.asDecimal());
        }
        if (reading instanceof NumberReading.Ambiguous twice) {
            report(
                    path,
                    Finding.stop(
                            path.step(),
                            "entry.ambiguous",
                            Arg.text(typed.text()),
                            Arg.number(twice.asDecimal(), twice.decimals(), Unit.NONE),
                            Arg.number(twice.asThousands(), 0, Unit.NONE)));
            return null;
        }
        if (unit.dimension() != range.core().dimension()) {
            report(path, wrongUnit(typed.unit().symbol(), range, path));
            return null;
        }
        double value = unit.to(range.core(), ((NumberReading.Value) reading).value());
        Arg shown = new Arg.Typed(typed.text().strip(), unit);
        Finding outside = LimitCheck.typed(value, shown, unit, range, path);
        if (outside != null) {
            findings.accept(outside);
        }
        return range.possible().contain(value) ? Double.valueOf(value) : null;
    }

    /**
     * A text like "1.099" is no thousands group where a thousand times as much is impossible. Where only the thousands are
     * possible the person is asked all the same: a slip of the decimal point looks like them.
     */
    private static boolean onlyDecimalIsPossible(NumberReading.Ambiguous twice, Unit unit, Range range) {
        return unit.dimension() == range.core().dimension()
                && range.possible().contain(unit.to(range.core(), twice.asDecimal()))
                && !range.possible().contain(unit.to(range.core(), twice.asThousands()));
    }

    /** Why a text is no number: a unit that the entry does not have, or no number at all. */
    private static Finding notANumber(EnteredQuantity typed, Range range, EntryPath<?> path) {
        Arg name = Arg.word(range.nameKey());
        Optional<NumberAndWord> parts = NumberAndWord.of(typed.text());
        if (parts.isEmpty()) {
            return Finding.stop(
                    path.step(), "entry.notANumber", Arg.text(typed.text().strip()), name, example(range));
        }
        return wrongUnit(parts.get().word(), range, path);
    }

    private static Finding wrongUnit(String unit, Range range, EntryPath<?> path) {
        Arg name = Arg.word(range.nameKey());
        if (range.core() == Unit.NONE) {
            return Finding.stop(path.step(), "entry.noUnit", Arg.text(unit), name);
        }
        Arg units = new Arg.Series(
                range.units().stream().map(Unit::symbol).map(Arg::text).toList());
        return Finding.stop(path.step(), "entry.wrongUnit", Arg.text(unit), name, units);
    }

    /** A number to show how one is typed: whole where things are counted. */
    private static Arg example(Range range) {
        boolean counts = range.core() == Unit.NONE && range.possible().low() >= 1;
        return counts ? Arg.number(range.usual().high(), 0, Unit.NONE) : Arg.number(EXAMPLE, 1, Unit.NONE);
    }

    /** A unit of the entry that was typed behind the number counts: "28 m" or "92ft" in a field whose unit is m. */
    private static EnteredQuantity withUnitFromText(EnteredQuantity given, Range range) {
        EnteredQuantity split = given.withUnitFromText();
        return range.units().contains(split.unit()) ? split : given;
    }

    private void report(EntryPath<?> path, Finding finding) {
        findings.accept(finding.at(path.pointer()));
    }
}
