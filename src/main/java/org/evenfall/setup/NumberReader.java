package org.evenfall.setup;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Consumer;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.quantity.Dimension;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Limits;
import org.evenfall.setup.path.Range;
import org.jspecify.annotations.Nullable;

/** Turns one typed quantity into a number in its core unit, or into a finding that says why it cannot be used. */
final class NumberReader {

    /** Decimals of the two values of an ambiguous number, so that none is ambiguous itself. */
    private static final int AMBIGUOUS_DECIMALS = 4;

    /** Most decimals of a limit or of the value outside it. */
    private static final int MOST_DECIMALS = 3;

    /** Assumption: a limit that rounding changes by more than this share would be read as another limit. */
    private static final double ROUNDED_SHARE = 0.005;

    private final Consumer<Finding> findings;

    /** @param findings takes what is to be reported */
    NumberReader(Consumer<Finding> findings) {
        this.findings = findings;
    }

    /** The sum of several amounts with a plus between them; null when one of them cannot be used. */
    @Nullable
    Double sum(EnteredQuantity typed, Range range, EntryPath<EnteredQuantity> path) {
        double sum = 0;
        for (String amount : typed.text().split("\\+", -1)) {
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
            report(
                    path,
                    Finding.stop(path.step(), "entry.notANumber", Arg.text(typed.text()), Arg.word(range.nameKey())));
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
                            Arg.number(twice.asDecimal(), AMBIGUOUS_DECIMALS, Unit.NONE),
                            Arg.number(twice.asThousands(), 0, Unit.NONE)));
            return null;
        }
        if (unit.dimension() != range.core().dimension()) {
            report(
                    path,
                    Finding.stop(
                            path.step(),
                            "entry.wrongUnit",
                            Arg.text(typed.unit().symbol()),
                            Arg.word(range.nameKey()),
                            Arg.text(range.shown().symbol())));
            return null;
        }
        double value = unit.to(range.core(), ((NumberReading.Value) reading).value());
        return check(value, unit, range, path) ? Double.valueOf(value) : null;
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

    /**
     * Reports a value outside its limits, in the unit in which it was typed.
     *
     * @param value in the core unit
     * @return whether the value is possible
     */
    boolean check(double value, Unit typed, Range range, EntryPath<?> path) {
        boolean possible = range.possible().contain(value);
        if (!possible || !range.usual().contain(value)) {
            Limits limits = possible ? range.usual() : range.possible();
            double low = range.core().to(typed, limits.low());
            double high = range.core().to(typed, limits.high());
            double shown = range.core().to(typed, value);
            int decimals = decimals(low, high, range);
            findings.accept(new Finding(
                    possible ? FindingKind.WARNING : FindingKind.STOP,
                    path.step(),
                    possible ? "entry.unusual" : "entry.impossible",
                    List.of(
                            Arg.word(range.nameKey()),
                            Arg.number(shown, decimalsOutside(shown, low, high, Math.max(1, decimals)), typed),
                            Arg.number(low, enough(low, decimals), typed),
                            Arg.number(high, enough(high, decimals), typed)),
                    path.pointer(),
                    ""));
        }
        return possible;
    }

    private static int decimals(double low, double high, Range range) {
        boolean small = range.core().dimension() != Dimension.COUNT && high < 10;
        return !small && low == Math.rint(low) && high == Math.rint(high) ? 0 : Math.max(1, range.decimals());
    }

    /** The usual decimals, or more where rounding would show another number: 0.15 must not become 0.2. */
    private static int enough(double value, int usual) {
        int decimals = usual;
        while (decimals < MOST_DECIMALS
                && Math.abs(rounded(value, decimals) - value) > ROUNDED_SHARE * Math.abs(value)) {
            decimals++;
        }
        return decimals;
    }

    /** Enough decimals, so that a value outside its limits is also shown outside them. */
    private static int decimalsOutside(double value, double low, double high, int usual) {
        int decimals = enough(value, usual);
        while (decimals < MOST_DECIMALS && rounded(value, decimals) >= low && rounded(value, decimals) <= high) {
            decimals++;
        }
        return decimals;
    }

    private static double rounded(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .doubleValue();
    }

    /** A unit that was typed behind the number counts: "28 m" or "92 ft" in a field whose unit is m. */
    private static EnteredQuantity withUnitFromText(EnteredQuantity given, Range range) {
        if (!(NumberText.read(given.text()) instanceof NumberReading.NotANumber)) {
            return given;
        }
        EnteredQuantity parsed = EnteredQuantity.parse(given.text().strip());
        return range.units().contains(parsed.unit()) ? parsed : given;
    }

    private void report(EntryPath<?> path, Finding finding) {
        findings.accept(finding.at(path.pointer()));
    }
}
