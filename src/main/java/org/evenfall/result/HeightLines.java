package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Step 4 in words: the heights to set and the machine as it hangs now. */
public final class HeightLines {

    /** Less is no correction that can be set, m. */
    private static final double SMALLEST_CORRECTION_M = 0.005;

    /** Less is even, m: half a millimetre. */
    private static final double EVEN_M = 0.0005;

    private HeightLines() {}

    /** The heights, as far as they are known; none without a result. */
    public static List<ResultLine> figures(Sentences words, @Nullable HeightResult height) {
        List<ResultLine> lines = new ArrayList<>();
        if (height == null) {
            return lines;
        }
        centimetres(lines, words, "height.figure.ground", height.overGroundM());
        centimetres(lines, words, "height.figure.chain", height.chainM());
        HeightResult.Now now = height.now();
        if (now.overCropM() != null) {
            centimetres(lines, words, "height.figure.now", now.overCropM());
        }
        if (now.correctionM() != null) {
            lines.add(new ResultLine(words.text("height.figure.move"), correction(words, now.correctionM())));
        }
        if (now.leftRightM() != null) {
            lines.add(new ResultLine(
                    words.text("height.figure.side"),
                    higher(words, now.leftRightM(), "picture.height.leftHigher", "picture.height.rightHigher")));
        }
        if (now.foreAftM() != null) {
            lines.add(new ResultLine(
                    words.text("height.figure.along"),
                    higher(words, now.foreAftM(), "picture.height.frontHigher", "picture.height.rearHigher")));
        }
        return lines;
    }

    /** What ten centimetres do to the throw, in one sentence; empty where it is not known. */
    public static String tenCentimetres(Sentences words, @Nullable HeightResult height) {
        return height == null || height.throwPer10CmRangeM() == null
                ? ""
                : words.text(
                        "height.tenCm",
                        Arg.number(height.throwPer10CmRangeM().low(), 1, Unit.NONE),
                        Arg.number(height.throwPer10CmRangeM().high(), 1, Unit.M));
    }

    private static void centimetres(List<ResultLine> lines, Sentences words, String key, double metres) {
        ResultLine.add(lines, words, key, 100 * metres, 0, Unit.CM);
    }

    private static String correction(Sentences words, double metres) {
        if (Math.abs(metres) < SMALLEST_CORRECTION_M) {
            return words.text("height.figure.stay");
        }
        return words.text(
                metres > 0 ? "height.figure.raise" : "height.figure.lower",
                Arg.number(100 * Math.abs(metres), 0, Unit.CM));
    }

    private static String higher(Sentences words, double metres, String first, String second) {
        return Math.abs(metres) < EVEN_M
                ? words.text("height.figure.even")
                : words.text(metres > 0 ? first : second, Arg.number(100 * Math.abs(metres), 1, Unit.CM));
    }
}
