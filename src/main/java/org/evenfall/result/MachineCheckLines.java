package org.evenfall.result;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.VaneCheck;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.CheckAnswers;
import org.evenfall.setup.entry.Setup;

/** Step 3 in words: the parts by their answers, the vanes, level and PTO speed. */
public final class MachineCheckLines {

    /** Less is even, m: half a millimetre. */
    private static final double EVEN_M = 0.0005;

    private MachineCheckLines() {}

    /** For each answer given the parts that have it; parts not yet answered are named only once one part is. */
    public static List<ResultLine> parts(Sentences words, Setup setup) {
        List<ResultLine> lines = new ArrayList<>();
        for (CheckAnswer answer : CheckAnswer.values()) {
            List<String> parts = Arrays.stream(CheckItem.values())
                    .filter(item -> CheckAnswers.of(setup.machineCheck(), item).answer() == answer)
                    .map(item -> words.text("picture.yard." + item.name()))
                    .toList();
            boolean nothingYet = answer == CheckAnswer.UNANSWERED && parts.size() == CheckItem.values().length;
            if (!parts.isEmpty() && !nothingYet) {
                lines.add(new ResultLine(words.choice(answer), String.join(", ", parts)));
            }
        }
        return lines;
    }

    /** Each vane with what it has lost; then level, PTO and disc speed; as far as they were measured. */
    public static List<ResultLine> measured(Sentences words, MachineCheckResult check) {
        List<ResultLine> lines = new ArrayList<>();
        add(
                lines,
                words.text("yard.vanes"),
                check.vanes().stream().map(vane -> vane(words, vane)).toList());
        add(lines, words.text("yard.measured"), levelAndShaft(words, check));
        return lines;
    }

    private static void add(List<ResultLine> lines, String label, List<String> parts) {
        if (!parts.isEmpty()) {
            lines.add(new ResultLine(label, String.join(" · ", parts)));
        }
    }

    /** Level of the frame, PTO and disc speed, as far as they were measured. */
    public static List<String> levelAndShaft(Sentences words, MachineCheckResult check) {
        List<String> measured = new ArrayList<>();
        Double level = check.levelDifferenceM();
        if (level != null) {
            measured.add(
                    Math.abs(level) < EVEN_M
                            ? words.text("picture.height.even")
                            : words.text(
                                    level > 0 ? "picture.height.leftHigher" : "picture.height.rightHigher",
                                    Arg.number(100 * Math.abs(level), 1, Unit.CM)));
        }
        if (check.ptoRpm() != null) {
            measured.add(
                    check.discRpm() == null
                            ? words.text("picture.yard.pto", Arg.number(check.ptoRpm(), 0, Unit.RPM))
                            : words.text(
                                    "picture.yard.ptoDisc",
                                    Arg.number(check.ptoRpm(), 0, Unit.RPM),
                                    Arg.number(check.discRpm(), 0, Unit.RPM)));
        }
        return measured;
    }

    /** A vane with what it has lost, where that was measured. */
    public static String vane(Sentences words, VaneCheck vane) {
        Arg side = Arg.word("choice.Side." + vane.side());
        return vane.wearM() == null
                ? words.text("picture.yard.vane", side, Arg.text(vane.label()))
                : words.text(
                        "picture.yard.vaneWorn",
                        side,
                        Arg.text(vane.label()),
                        Arg.number(1000 * vane.wearM(), 0, Unit.MM));
    }
}
