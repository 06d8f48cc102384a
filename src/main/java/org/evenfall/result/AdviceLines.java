package org.evenfall.result;

import java.util.stream.Collectors;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.CheckItem;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.AdviceReason;
import org.evenfall.trays.ExpectedCv;
import org.evenfall.trays.LeverMove;
import org.jspecify.annotations.Nullable;

/** Step 6 in words, the next move. */
public final class AdviceLines {

    private AdviceLines() {}

    /** What to do, and for a lever which, from where to where. */
    public static String headline(Sentences words, @Nullable Advice advice) {
        if (advice == null) {
            return words.choice(AdviceKind.DO_A_TEST);
        }
        if (advice.moves().isEmpty()) {
            return heading(words, advice);
        }
        return advice.moves().stream().map(move -> move(words, move, advice)).collect(Collectors.joining(" "));
    }

    /** The heading of a kind, or that of the cause where the kind covers several. */
    private static String heading(Sentences words, Advice advice) {
        Integer more = advice.moreRuns();
        if (more != null) {
            return words.text(more == 1 ? "trays.head.moreRuns" : "trays.head.moreRunsMany", Arg.count(more));
        }
        if (advice.kind() == AdviceKind.REPEAT_TEST || advice.kind() == AdviceKind.OUTLETS_AND_VANES) {
            for (AdviceReason reason : advice.reasons()) {
                String key = cause(reason);
                if (!key.isEmpty()) {
                    return reason.kind() == AdviceReason.Kind.SPOILT_TRAY
                            ? words.text(
                                    key, Arg.count(Math.round(reason.numbers().get(0))))
                            : words.text(key);
                }
            }
        }
        return words.choice(advice.kind());
    }

    private static String cause(AdviceReason reason) {
        return switch (reason.kind()) {
            case SPOILT_TRAY -> "trays.head.typeAgain";
            case GUARDS_UNSEEN -> "trays.head.guards";
            case PRODUCT_DAMP, PRODUCT_CAKED -> "trays.head.product";
            case PART_FAILED ->
                reason.subject().equals(CheckItem.GUARDS.name()) ? "trays.head.guards" : "trays.head.part";
            default -> "";
        };
    }

    private static String move(Sentences words, LeverMove move, Advice advice) {
        return words.text(
                advice.probe()
                        ? "trays.moveProbe"
                        : advice.back() ? "trays.moveBack" : move.wider() ? "trays.moveWider" : "trays.moveNarrower",
                Arg.text(move.lever()),
                Arg.number(move.from(), decimals(move.from()), Unit.NONE),
                Arg.number(move.to(), decimals(move.to()), Unit.NONE),
                Arg.text(move.unit()));
    }

    static int decimals(double value) {
        return value == Math.rint(value) ? 0 : 1;
    }

    /** Field CV and tray CV to expect after the move, in one sentence; empty without a move. */
    public static String expected(Sentences words, @Nullable Advice advice) {
        ExpectedCv tray = advice == null ? null : advice.expected();
        ExpectedCv field = advice == null ? null : advice.expectedField();
        return tray == null || field == null
                ? ""
                : words.text("trays.expected", range(words, field), range(words, tray));
    }

    private static Arg range(Sentences words, ExpectedCv cv) {
        return Arg.text(words.text(
                "trays.range",
                Arg.number(cv.percent(), 0, Unit.PERCENT),
                Arg.number(cv.intervalPercent().low(), 0, Unit.NONE),
                Arg.number(cv.intervalPercent().high(), 0, Unit.PERCENT)));
    }
}
