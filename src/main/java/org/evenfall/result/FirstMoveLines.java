package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.FirstMove;
import org.evenfall.trays.LeverMove;
import org.jspecify.annotations.Nullable;

/** The first move on paper in words. */
public final class FirstMoveLines {

    private FirstMoveLines() {}

    /** Heading, then one sentence a line. */
    public static List<String> of(Sentences words, FirstMove move) {
        List<String> lines = new ArrayList<>();
        lines.add(words.text("firstMove.heading"));
        lines.add(words.text(
                "firstMove.expected",
                Arg.count(move.runs()),
                grams(move.expectedG()),
                grams(move.lowG()),
                grams(move.highG())));
        if (!move.leftTrays().isEmpty()) {
            lines.add(words.text(
                    "firstMove.sides", trays(move.leftTrays()), trays(move.rightTrays()), grams(move.sidesG())));
        }
        lines.add(words.text(
                "firstMove.above", trays(move.middleTrays()), grams(move.aboveG()), turn(words, move.whenAbove())));
        lines.add(words.text(
                "firstMove.below", trays(move.middleTrays()), grams(move.belowG()), turn(words, move.whenBelow())));
        lines.add(words.text("firstMove.then"));
        return lines;
    }

    private static Arg turn(Sentences words, @Nullable LeverMove move) {
        return Arg.text(
                move == null
                        ? words.text("firstMove.typeFirst")
                        : words.text(
                                "firstMove.turn",
                                Arg.text(move.lever()),
                                Arg.number(move.from(), AdviceLines.decimals(move.from()), Unit.NONE),
                                Arg.number(move.to(), AdviceLines.decimals(move.to()), Unit.NONE)));
    }

    private static Arg trays(List<Integer> numbers) {
        return Arg.text(numbers.stream().sorted().map(String::valueOf).collect(Collectors.joining(" + ")));
    }

    private static Arg grams(double grams) {
        return Arg.number(grams, 1, Unit.G);
    }
}
