package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.SeasonUse;
import org.evenfall.setup.SeasonLogResult;
import org.evenfall.setup.SeasonLogResult.Field;
import org.evenfall.setup.SeasonLogResult.Plan;

/** What was spread, in words: all passes together, and each field against the plan of the season. */
public final class LogLines {

    private LogLines() {}

    /** All of it; nothing while nothing is logged. */
    static List<ResultLine> of(Sentences words, SeasonLogResult log) {
        List<ResultLine> lines = new ArrayList<>();
        ResultLine.addSentence(lines, sum(words, log));
        for (Field field : log.fields()) {
            lines.add(ResultLine.sentence(field(words, field, field.field())));
        }
        return lines;
    }

    /** Product, nitrogen and area of all passes, and how many are not complete; empty while nothing is logged. */
    public static String sum(Sentences words, SeasonLogResult log) {
        List<String> parts = new ArrayList<>();
        SeasonUse total = log.total();
        if (total.passes() > 0) {
            Arg product = Arg.number(total.productKg(), 0, Unit.KG);
            Arg area = Arg.number(total.spreadHa(), 1, Unit.HA);
            parts.add(
                    total.nitrogenKg() == null
                            ? words.text("log.sum", product, area)
                            : words.text("log.sumNitrogen", product, Arg.number(total.nitrogenKg(), 0, Unit.KG), area));
        }
        if (log.incomplete() > 0) {
            parts.add(words.text("log.incomplete", Arg.count(log.incomplete())));
        }
        return String.join(" ", parts);
    }

    /**
     * What a field got, and what is left of the plan.
     *
     * @param name what the field is called here; empty where it has no name
     */
    public static String field(Sentences words, Field field, String name) {
        Arg called = Arg.text(name(words, name));
        Double nitrogen = field.amounts().nitrogenKgPerHa();
        if (nitrogen == null) {
            return words.text(
                    "log.fieldProduct", called, Arg.number(field.amounts().productKg(), 0, Unit.KG));
        }
        Arg spread = Arg.number(nitrogen, 0, Unit.KG_PER_HA);
        Plan plan = field.plan();
        return plan == null
                ? words.text("log.field", called, spread)
                : words.text(
                        plan.leftKgPerHa() < 0 ? "log.fieldMore" : "log.fieldLeft",
                        called,
                        Arg.count(field.amounts().passes()),
                        Arg.count(plan.passes()),
                        spread,
                        Arg.number(Math.abs(plan.leftKgPerHa()), 0, Unit.KG_PER_HA));
    }

    /** The name of a field, or that it has none. */
    public static String name(Sentences words, String name) {
        return name.isEmpty() ? words.text("log.noField") : name;
    }
}
