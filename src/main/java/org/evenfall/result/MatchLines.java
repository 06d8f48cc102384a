package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.PatternChange;
import org.evenfall.reference.RankedProduct;
import org.evenfall.reference.TestedProduct;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.path.SettingsPaths;
import org.jspecify.annotations.Nullable;

/** Step 2 in words: how each tested product compares, and the settings to start from. */
public final class MatchLines {

    /** What is shown where a value is not known. */
    private static final String NOT_KNOWN = "–";

    private MatchLines() {}

    /** What a tested product is called; today's settings have no name of their own. */
    public static String name(Sentences words, String id, String name) {
        return id.equals(TestedProduct.TODAY_ID) ? words.text("match.today") : name;
    }

    /** What each of the {@link #figures} is, in their order. */
    public static List<String> headers(Sentences words) {
        return List.of(
                words.text("match.share"),
                words.text("match.width"),
                words.text("match.density"),
                words.text("match.size"),
                words.text("match.throw"),
                words.text("match.flow"),
                words.text("match.kept"));
    }

    /** What each of the {@link #shortFigures} is, in their order. */
    public static List<String> shortHeaders(Sentences words) {
        return List.of(words.text("match.lands"), words.text("match.flow"), words.text("match.share"));
    }

    /** How far from it the product lands, how its flow differs, and the chance that it is the closest. */
    public static List<String> shortFigures(Sentences words, RankedProduct reference) {
        return List.of(
                signed(words, reference.throwDifference().metres(), 1, Unit.M),
                signed(words, reference.difference().flowPercent(), 0, Unit.PERCENT),
                words.number(100 * reference.closestShare(), 0, Unit.PERCENT));
    }

    /** Chance of being the closest, width, differences, and the CV with the settings kept of one tested product. */
    public static List<String> figures(Sentences words, RankedProduct reference) {
        return List.of(
                words.number(100 * reference.closestShare(), 0, Unit.PERCENT),
                words.number(reference.widthM(), 0, Unit.M),
                signed(words, reference.difference().densityPercent(), 0, Unit.PERCENT),
                signed(words, reference.difference().d50Percent(), 0, Unit.PERCENT),
                signed(words, reference.throwDifference().metres(), 1, Unit.M),
                signed(words, reference.difference().flowPercent(), 0, Unit.PERCENT),
                kept(words, reference));
    }

    /** The tested CV and how the model expects it to change with the settings kept. */
    private static String kept(Sentences words, RankedProduct reference) {
        PatternChange pattern = reference.pattern();
        if (pattern == null) {
            return NOT_KNOWN;
        }
        Arg points = Arg.number(pattern.cvChangePercent(), 0, Unit.NONE);
        if (reference.testedCvPercent() == null) {
            return pattern.alike() ? words.text("match.keptAlike") : words.text("match.keptMore", points);
        }
        Arg tested = Arg.number(reference.testedCvPercent(), 0, Unit.PERCENT);
        return pattern.alike()
                ? words.text("match.keptTestedAlike", tested)
                : words.text("match.keptTestedMore", tested, points);
    }

    private static String signed(Sentences words, @Nullable Double value, int decimals, Unit unit) {
        if (value == null) {
            return NOT_KNOWN;
        }
        String digits = words.number(value, decimals, unit);
        boolean nothing = digits.chars().noneMatch(sign -> sign >= '1' && sign <= '9');
        return value > 0 && !nothing ? "+" + digits : digits;
    }

    /** How often the measurements were repeated in simulation; empty where they were not. */
    public static String repeats(Sentences words, @Nullable MatchResult match) {
        return match == null || match.redraws() == 0 ? "" : words.text("match.redrawn", Arg.count(match.redraws()));
    }

    /** How the machine is set, as typed: each lever, PTO speed, height and tilt, as far as they are typed. */
    public static List<ResultLine> settings(Sentences words, SettingsEntries settings) {
        List<ResultLine> lines = new ArrayList<>();
        settings.levers().forEach((lever, setting) -> {
            if (!setting.isBlank()) {
                lines.add(new ResultLine(lever, words.typed(setting)));
            }
        });
        ResultLine.addTyped(lines, words, SettingsPaths.PTO_SPEED.labelKey(), settings.ptoSpeed());
        ResultLine.addTyped(lines, words, SettingsPaths.HEIGHT_OVER_CROP.labelKey(), settings.heightOverCrop());
        ResultLine.addTyped(lines, words, SettingsPaths.TILT.labelKey(), settings.tilt());
        return lines;
    }
}
