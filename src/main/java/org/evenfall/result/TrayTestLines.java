package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TraysResult;
import org.evenfall.trays.CropLoss;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.RegionContrasts;
import org.evenfall.trays.Uniformity;

/** Step 6 in words, after driving: how even a test is, where it differs, what that costs. */
public final class TrayTestLines {

    /** Less is alike, %: it rounds to nothing. */
    private static final double NOTHING_PERCENT = 0.5;

    private TrayTestLines() {}

    /** How even a test is: its CV with interval and verdict, and its noise. The one place for it. */
    public static List<ResultLine> evenness(Sentences words, Uniformity test) {
        List<ResultLine> lines = new ArrayList<>();
        lines.add(ResultLine.sentence(words.text(
                "trays.cvResult",
                Arg.number(test.cvPercent(), 0, Unit.PERCENT),
                Arg.number(test.cv().lowPercent(), 0, Unit.NONE),
                Arg.number(test.cv().highPercent(), 0, Unit.PERCENT),
                Arg.word("choice.EvennessVerdict." + test.verdict()))));
        lines.add(new ResultLine(
                words.text("trays.figure.machine"),
                test.cv().machinePercent() == null
                        ? words.text("trays.figure.machineNot")
                        : words.text("word.about", Arg.number(test.cv().machinePercent(), 0, Unit.PERCENT))));
        ResultLine.add(lines, words, "trays.figure.noiseHere", test.cv().noisePercent(), 0, Unit.PERCENT);
        lines.add(new ResultLine(
                words.text("trays.figure.chance"),
                words.text(
                        "word.about",
                        Arg.number(
                                100 * test.cv().probabilities().atMost(EvennessVerdict.ACCEPTABLE), 0, Unit.PERCENT))));
        return lines;
    }

    /** One part of the width against another. */
    public static List<ResultLine> differences(Sentences words, Uniformity test) {
        RegionContrasts contrasts = test.contrasts();
        return List.of(
                new ResultLine(
                        words.text("trays.figure.sides"),
                        more(words, contrasts.leftRightPercent(), "trays.leftMore", "trays.rightMore")),
                new ResultLine(
                        words.text("trays.figure.centre"),
                        more(words, contrasts.centreOverlapPercent(), "trays.centreMore", "trays.overlapMore")));
    }

    /** Which of two gets more, and by how much. */
    static String more(Sentences words, double percent, String first, String second) {
        return Math.abs(percent) < NOTHING_PERCENT
                ? words.text("trays.alike")
                : words.text(percent > 0 ? first : second, Arg.number(Math.abs(percent), 0, Unit.PERCENT));
    }

    /** What the unevenness of the last test costs, for scale; empty without a test and where it is good. */
    public static String loss(Sentences words, TraysResult trays) {
        CropLoss loss = trays.loss();
        Uniformity last = trays.lastEvenness();
        return loss == null || last == null || last.verdict() == EvennessVerdict.GOOD
                ? ""
                : words.text(
                        "trays.loss",
                        Arg.number(loss.lowKgPerHa(), 0, Unit.KG_PER_HA),
                        Arg.number(loss.highKgPerHa(), 0, Unit.KG_PER_HA));
    }

    /** The rate that the trays caught, a caution only; empty where it is not known. */
    public static String meanRate(Sentences words, Uniformity test) {
        Double rate = test.catches().meanRateKgPerHa();
        return rate == null ? "" : words.text("trays.meanRate", Arg.number(rate, 0, Unit.KG_PER_HA));
    }
}
