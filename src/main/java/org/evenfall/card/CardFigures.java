package org.evenfall.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.Lever;
import org.evenfall.machine.RateSetting;
import org.evenfall.machine.Side;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.RatePlan;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.FinalSettings;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/**
 * The large values, in the order in which the driver sets them.
 *
 * @param setup what was entered
 * @param assessment its assessment
 * @param words the card's language
 */
record CardFigures(Setup setup, Assessment assessment, Sentences words) {

    /** Most letters of a unit. Assumption: a longer entry is a remark on the scale. */
    private static final int LONGEST_UNIT = 4;

    /** Signs that are read as a minus. */
    private static final String MINUS_SIGNS = "-\u2212";

    /** The values that are printed large: all but a tilt of 0, which is in the small lines. */
    List<CardContent.Figure> large() {
        Double tilt = assessment.card().settings().tiltDeg();
        String label = words.text("card.tilt");
        return tilt != null && tilt == 0
                ? all().stream().filter(figure -> !figure.label().equals(label)).toList()
                : all();
    }

    /** All values that are known. */
    List<CardContent.Figure> all() {
        List<CardContent.Figure> figures = new ArrayList<>();
        FinalSettings settings = assessment.card().settings();
        RatePlan plan = assessment.rate().plan();
        if (plan != null) {
            add(figures, "card.rate", words.number(plan.amounts().productKgPerHa(), 0, Unit.KG_PER_HA));
            add(figures, "card.rateN", words.number(plan.amounts().nitrogenKgPerHa(), 0, Unit.KG_PER_HA));
        }
        if (assessment.tramlineWidthM() != null) {
            add(figures, "card.width", Decimals.fewest(words, assessment.tramlineWidthM(), 1, Unit.M));
        }
        opening(figures, settings, plan);
        for (Map.Entry<String, String> lever : levers(settings).entrySet()) {
            figures.add(new CardContent.Figure(lever.getKey(), lever.getValue()));
        }
        number(figures, "card.pto", settings.ptoRpm(), 1, 0, Unit.RPM);
        engine(figures);
        Double speed = settings.speedKmPerH();
        number(figures, "card.speed", speed, 1, speed != null && speed == Math.rint(speed) ? 0 : 1, Unit.KM_PER_H);
        number(figures, "card.height", settings.heightOverCropM(), 100, 0, Unit.CM);
        if (assessment.height() != null) {
            number(figures, "card.chain", assessment.height().chainM(), 100, 0, Unit.CM);
        }
        if (settings.tiltDeg() != null) {
            add(figures, "card.tilt", Decimals.fewest(words, settings.tiltDeg(), 1, Unit.DEG));
        }
        if (plan != null && plan.bucket().kg() != null && plan.bucket().seconds() != null) {
            figures.add(new CardContent.Figure(
                    words.text("card.bucket", Arg.number(plan.bucket().seconds(), 0, Unit.S)),
                    words.number(plan.bucket().kg(), 1, Unit.KG)));
        }
        typed(figures, "card.windStop", setup.card().windStop());
        switching(figures, "card.switchOn", "card.switchOnEdge", setup.trays().switchOn());
        switching(figures, "card.switchOff", "card.switchOffEdge", setup.trays().switchOff());
        if (!setup.trays().borderDevice().isBlank()) {
            String side = setup.trays().borderSide() == Side.UNANSWERED
                    ? ""
                    : ", " + words.choice(setup.trays().borderSide());
            add(figures, "card.border", setup.trays().borderDevice() + side);
        }
        return figures;
    }

    /** Engine speed and gear that give the PTO speed, where they are typed. */
    private void engine(List<CardContent.Figure> figures) {
        EnteredQuantity engine = setup.machineCheck().engineSpeed();
        String gear = setup.machineCheck().gear().strip();
        String speed = engine.isBlank() ? "" : Decimals.typed(words, engine);
        String both = Stream.of(speed, gear.isEmpty() ? "" : words.text("card.gear", Arg.text(gear)))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
        if (!both.isEmpty()) {
            add(figures, "card.engine", both);
        }
    }

    /** The opening of both sides, or the factor once, with the rate and the bulk density that it holds for. */
    private void opening(List<CardContent.Figure> figures, FinalSettings settings, @Nullable RatePlan plan) {
        RateSetting setting = assessment.machine().rateSetting();
        Double left = settings.openingLeft();
        Double right = settings.openingRight();
        if (setting.byFactor() && left != null) {
            figures.add(new CardContent.Figure(factorLabel(plan), value(left, setting)));
        } else if (left != null && right != null) {
            figures.add(new CardContent.Figure(words.text("card.openingLeft"), value(left, setting), true));
            add(figures, "card.openingRight", value(right, setting));
        }
    }

    private String factorLabel(@Nullable RatePlan plan) {
        BucketResult bucket = assessment.rate().lastBucket();
        Double density = bucket == null ? null : bucket.bulkDensityKgPerL();
        List<String> holdsFor = new ArrayList<>();
        if (plan != null) {
            holdsFor.add(words.number(plan.amounts().productKgPerHa(), 0, Unit.KG_PER_HA));
        }
        if (density != null) {
            holdsFor.add(words.number(density, 2, Unit.KG_PER_L));
        }
        return holdsFor.isEmpty()
                ? words.text("card.factor")
                : words.text("card.factorFor", Arg.text(String.join(", ", holdsFor)));
    }

    private String value(double opening, RateSetting setting) {
        return words.number(opening, setting.decimals(opening), Unit.NONE);
    }

    /** Label to setting of each lever that has one, in the order of the machine's levers. */
    private Map<String, String> levers(FinalSettings settings) {
        Map<String, String> ordered = new LinkedHashMap<>();
        for (Lever lever : assessment.machine().levers()) {
            Double setting = settings.levers().get(lever.label());
            if (setting != null) {
                ordered.put(label(lever), Decimals.scale(words, setting));
            }
        }
        return ordered;
    }

    /** The owner's label of a lever, with its unit unless that is a sentence. */
    private static String label(Lever lever) {
        return lever.unit().isBlank() || lever.unit().length() > LONGEST_UNIT
                ? lever.label()
                : lever.label() + ", " + lever.unit();
    }

    private void add(List<CardContent.Figure> figures, String key, String value) {
        figures.add(new CardContent.Figure(words.text(key), value));
    }

    private void number(
            List<CardContent.Figure> figures,
            String key,
            @Nullable Double value,
            double factor,
            int decimals,
            Unit unit) {
        if (value != null) {
            add(figures, key, words.number(value * factor, decimals, unit));
        }
    }

    private void typed(List<CardContent.Figure> figures, String key, EnteredQuantity typed) {
        if (!typed.isBlank()) {
            add(figures, key, Decimals.typed(words, typed));
        }
    }

    /** A distance from the headland tramline; its side in words instead of a sign. */
    private void switching(
            List<CardContent.Figure> figures, String intoField, String towardEdge, EnteredQuantity typed) {
        if (typed.isBlank()) {
            return;
        }
        String text = Decimals.typed(words, typed);
        boolean minus = !text.isEmpty() && MINUS_SIGNS.indexOf(text.charAt(0)) >= 0;
        add(figures, minus ? towardEdge : intoField, minus ? text.substring(1).strip() : text);
    }
}
