package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TraysResult;
import org.evenfall.trays.Contrast;
import org.evenfall.trays.CropLoss;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.RegionContrasts;
import org.evenfall.trays.Uniformity;

/** Step 6 in words, after driving: how even a test is, where it differs, what that costs. */
public final class TrayTestLines {

    private TrayTestLines() {}

    /** The field CV of a test with its interval and what it means, in one sentence. */
    public static String fieldCv(Sentences words, Uniformity test) {
        return words.text(
                "trays.cvResult",
                Arg.number(test.field().medianPercent(), 0, Unit.PERCENT),
                Arg.number(test.field().lowPercent(), 0, Unit.NONE),
                Arg.number(test.field().highPercent(), 0, Unit.PERCENT),
                Arg.word("choice.EvennessVerdict." + test.verdict()));
    }

    /** The chance of an even field, the tray CV, its noise. */
    public static List<ResultLine> figures(Sentences words, Uniformity test) {
        List<ResultLine> lines = new ArrayList<>();
        lines.add(new ResultLine(
                words.text("trays.figure.chance"),
                words.text("word.about", Arg.number(test.field().statedChancePercent(), 0, Unit.PERCENT))));
        ResultLine.add(lines, words, "trays.figure.trayCv", test.cvPercent(), 0, Unit.PERCENT);
        ResultLine.add(lines, words, "trays.figure.noiseHere", test.cv().noisePercent(), 0, Unit.PERCENT);
        return lines;
    }

    /** One part of the width against another, where the difference is beyond its noise. */
    public static List<ResultLine> differences(Sentences words, RegionContrasts contrasts) {
        List<ResultLine> lines = new ArrayList<>();
        add(lines, words, "trays.figure.sides", contrasts.leftRight(), "trays.leftMore", "trays.rightMore");
        add(lines, words, "trays.figure.centre", contrasts.centreOverlap(), "trays.centreMore", "trays.overlapMore");
        add(lines, words, "trays.figure.quarter", contrasts.quarterPoint(), "trays.quarterMore", "trays.quarterLess");
        return lines;
    }

    private static void add(
            List<ResultLine> lines, Sentences words, String nameKey, Contrast contrast, String more, String less) {
        if (contrast.significant()) {
            lines.add(new ResultLine(
                    words.text(nameKey),
                    words.text(
                            contrast.percent() > 0 ? more : less,
                            Arg.number(Math.abs(contrast.percent()), 0, Unit.PERCENT))));
        }
    }

    /** That no difference is beyond its noise; empty where one is. */
    public static String noDifference(Sentences words, RegionContrasts contrasts) {
        return contrasts.anySignificant() ? "" : words.text("trays.noContrast");
    }

    /** What the unevenness of the last test costs, for scale; empty without a test and where the field is even. */
    public static String loss(Sentences words, TraysResult trays) {
        CropLoss loss = trays.loss();
        Uniformity last = trays.lastEvenness();
        return loss == null || last == null || last.verdict() == EvennessVerdict.EVEN
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
