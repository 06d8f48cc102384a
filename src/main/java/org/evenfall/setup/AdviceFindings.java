package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceReason;

/** The reasons of an advice as findings: key of the sentence, arguments and severity. */
public final class AdviceFindings {

    private static final String PREFIX = "trays.advice.";

    private AdviceFindings() {}

    /** One finding a reason, in order. */
    public static List<Finding> of(Advice advice) {
        return advice.reasons().stream().map(AdviceFindings::of).toList();
    }

    private static Finding of(AdviceReason reason) {
        return switch (reason.kind()) {
            case DO_A_TEST -> note("doATest");
            case WINDY -> warn("windy", Arg.number(number(reason, 0), 1, Unit.M_PER_S));
            case POOLED -> note("pooled", Arg.count(Math.round(number(reason, 0))), percent(reason, 1));
            case KEEP -> note("keep", percent(reason, 0), percent(reason, 1));
            case JUST_UNDER -> note("justUnder", percent(reason, 0));
            case NOISE -> warn("noise", percent(reason, 0));
            case ONE_SIDE -> oneSide(number(reason, 0));
            case LEVEL_FIRST -> note("level");
            case PTO_FIRST -> note("pto");
            case OUTLETS_FIRST -> note("outlets");
            case NO_SHAPE -> note("noShape");
            case CENTRE_HEAVY -> note("centreHeavy", percent(reason, 0));
            case OVERLAP_HEAVY -> note("overlapHeavy", percent(reason, 0));
            case QUARTERS_LIGHT -> note("quartersLight", percent(reason, 0));
            case QUARTERS_HEAVY -> note("quartersHeavy", percent(reason, 0));
            case NO_LEVER -> warn("noLever");
            case END_STOP -> warn("endStop");
            case NO_BETTER -> note("noBetter");
            case DIRECTION -> warn("direction", Arg.text(reason.lever()));
            case BACK -> note("back", percent(reason, 0));
            case ONE_LEVER -> note("oneLever");
            case TWO_LEVERS -> note("twoLevers");
            case NOT_YET -> warn("notYet");
            case THEN_AGAIN -> note("thenAgain");
        };
    }

    /** @param leftRightPercent left less right, % of the mean: the side that gets less is named */
    private static Finding oneSide(double leftRightPercent) {
        return warn(
                "oneSide",
                Arg.word(leftRightPercent < 0 ? "word.left" : "word.right"),
                Arg.number(Math.abs(leftRightPercent), 0, Unit.PERCENT));
    }

    private static double number(AdviceReason reason, int index) {
        return reason.numbers().get(index);
    }

    private static Arg percent(AdviceReason reason, int index) {
        return Arg.number(number(reason, index), 0, Unit.PERCENT);
    }

    private static Finding note(String key, Arg... args) {
        return Finding.note(Step.TRAYS, PREFIX + key, args);
    }

    private static Finding warn(String key, Arg... args) {
        return Finding.warn(Step.TRAYS, PREFIX + key, args);
    }
}
