package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Severity;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Dimension;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Reads what was typed and collects what there is to tell about it. One reader an assessment; not shared. */
final class EntryReader {

    private final List<Finding> findings = new ArrayList<>();

    List<Finding> findings() {
        return findings;
    }

    void add(Finding finding) {
        findings.add(finding);
    }

    boolean has(Step step, Severity severity) {
        return findings.stream().anyMatch(finding -> finding.step() == step && finding.severity() == severity);
    }

    /**
     * The value in the first unit of its kind; null when nothing was typed or when it cannot be used, with a finding for
     * the latter.
     */
    @Nullable
    Double read(EnteredQuantity typed, FieldSpec spec, String pointer) {
        return read(typed, spec, pointer, spec.step());
    }

    @Nullable
    Double read(EnteredQuantity given, FieldSpec spec, String pointer, Step step) {
        EnteredQuantity typed = withUnitFromText(given, spec);
        NumberReading reading = NumberText.read(typed.text());
        if (reading instanceof NumberReading.Empty) {
            return null;
        }
        if (reading instanceof NumberReading.NotANumber) {
            add(Finding.stop(step, "entry.notANumber", Arg.text(typed.text()), Arg.word(spec.key()))
                    .at(pointer));
            return null;
        }
        if (reading instanceof NumberReading.Ambiguous twice) {
            add(Finding.stop(
                            step,
                            "entry.ambiguous",
                            Arg.text(typed.text()),
                            Arg.number(twice.asDecimal(), 4, Unit.NONE),
                            Arg.number(twice.asThousands(), 0, Unit.NONE))
                    .at(pointer));
            return null;
        }
        Unit unit = typed.unit() == Unit.NONE ? spec.base() : typed.unit();
        if (unit.dimension() != spec.base().dimension()) {
            add(Finding.stop(
                            step,
                            "entry.wrongUnit",
                            Arg.text(typed.unit().symbol()),
                            Arg.word(spec.key()),
                            Arg.text(spec.base().symbol()))
                    .at(pointer));
            return null;
        }
        double value = unit.to(spec.base(), ((NumberReading.Value) reading).value());
        return limited(value, unit, spec, pointer, step);
    }

    private @Nullable Double limited(double value, Unit unit, FieldSpec spec, String pointer, Step step) {
        boolean possible = value >= spec.low() - 1e-9 && value <= spec.high() + 1e-9;
        boolean usual = value >= spec.usualLow() - 1e-9 && value <= spec.usualHigh() + 1e-9;
        if (!possible || !usual) {
            double low = spec.base().to(unit, possible ? spec.usualLow() : spec.low());
            double high = spec.base().to(unit, possible ? spec.usualHigh() : spec.high());
            int decimals = decimals(low, high, spec);
            add(new Finding(
                    possible ? Severity.WARN : Severity.STOP,
                    step,
                    possible ? "entry.unusual" : "entry.impossible",
                    List.of(
                            Arg.word(spec.key()),
                            Arg.number(spec.base().to(unit, value), Math.max(1, decimals), unit),
                            Arg.number(low, decimals, unit),
                            Arg.number(high, decimals, unit)),
                    pointer,
                    ""));
        }
        return possible ? Double.valueOf(value) : null;
    }

    private static int decimals(double low, double high, FieldSpec spec) {
        double smallest = Math.min(Math.abs(low), Math.abs(high));
        if (spec.base().dimension() != Dimension.COUNT && high < 10) {
            return smallest > 0 && smallest < 0.1 ? 3 : Math.max(1, spec.decimals());
        }
        return low == Math.rint(low) && high == Math.rint(high) ? 0 : Math.max(1, spec.decimals());
    }

    /** Someone typed "28 m" into the field whose unit is already m, or "92 ft" into it: the typed unit counts. */
    private static EnteredQuantity withUnitFromText(EnteredQuantity given, FieldSpec spec) {
        if (!(NumberText.read(given.text()) instanceof NumberReading.NotANumber)) {
            return given;
        }
        EnteredQuantity parsed = EnteredQuantity.parse(given.text().strip());
        return spec.units().contains(parsed.unit()) ? parsed : given;
    }

    /** Every value that can be used, in order; what is blank is passed over. */
    List<Double> readAll(List<EnteredQuantity> typed, FieldSpec spec, String pointer) {
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            Double value = read(typed.get(i), spec, pointer + "/" + i);
            if (value != null) {
                values.add(value);
            }
        }
        return values;
    }

    /** Something that has to be there for the step to be done. */
    boolean need(boolean there, Step step, String key, String pointer) {
        if (!there) {
            add(Finding.note(step, key).at(pointer));
        }
        return there;
    }
}
