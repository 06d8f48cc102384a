package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceReason;

/** The reasons of an advice as findings: key of the sentence, arguments and kind. */
public final class AdviceFindings {

    private AdviceFindings() {}

    /** The reason that decides. */
    public static Finding decisive(Advice advice) {
        return of(advice.decisive());
    }

    /** The reasons that explain more, in order. */
    public static List<Finding> others(Advice advice) {
        return advice.reasons().stream()
                .filter(reason -> !reason.equals(advice.decisive()))
                .map(AdviceFindings::of)
                .toList();
    }

    /** One finding a reason, in order. */
    public static List<Finding> of(Advice advice) {
        return advice.reasons().stream().map(AdviceFindings::of).toList();
    }

    private static Finding of(AdviceReason reason) {
        return switch (reason.kind()) {
            case DO_A_TEST -> note("trays.advice.doATest");
            case WINDY ->
                warn("trays.advice.windy", Arg.number(number(reason, 0), 1, Unit.M_PER_S))
                        .from("source.wind");
            case POOLED -> note("trays.advice.pooled", Arg.count(Math.round(number(reason, 0))), percent(reason, 1));
            case KEEP ->
                note("trays.advice.keep", percent(reason, 0), percent(reason, 1))
                        .from("source.cvLimits");
            case JUST_UNDER ->
                note("trays.advice.justUnder", percent(reason, 0)).from("source.advice");
            case MEND_FIRST -> note("trays.advice.mendFirst").from("source.orderOfCure");
            case LOOK_FIRST -> note("trays.advice.lookFirst").from("source.orderOfCure");
            case MEND_ALL_THE_SAME -> note("trays.advice.mendAllTheSame").from("source.orderOfCure");
            case SPOILT_TRAY -> spoiltTray(reason);
            case TWIN_TRAY ->
                note("trays.advice.twinTray", Arg.count(Math.round(number(reason, 0))))
                        .from("source.spoiltTray");
            case TYPE_OR_BLANK -> note("trays.advice.typeOrBlank").from("source.spoiltTray");
            case TYPE_OR_REPEAT -> note("trays.advice.typeOrRepeat").from("source.spoiltTray");
            case NOISE ->
                warn("trays.advice.noise", percent(reason, 0), Arg.count(Math.round(number(reason, 1))))
                        .from("source.countingNoise");
            case ONE_SIDE ->
                warn("trays.advice.oneSide", side(reason), size(reason), Arg.number(number(reason, 1), 1, Unit.M))
                        .from("source.mirrorPairs");
            case VANES_AGAIN -> note("trays.advice.vanesAgain", side(reason)).from("source.orderOfCure");
            case STILL_ONE_SIDE ->
                note("trays.advice.stillOneSide", side(reason), size(reason)).from("source.mirrorPairs");
            case LEVEL_FIRST -> note("trays.advice.level").from("source.orderOfCure");
            case PTO_FIRST -> note("trays.advice.pto").from("source.orderOfCure");
            case OUTLETS_FIRST -> note("trays.advice.outlets").from("source.orderOfCure");
            case NO_SHAPE -> note("trays.advice.noShape").from("source.shapes");
            case CENTRE_HEAVY ->
                note("trays.advice.centreHeavy", percent(reason, 0)).from("source.shapes");
            case OVERLAP_HEAVY ->
                note("trays.advice.overlapHeavy", percent(reason, 0)).from("source.shapes");
            case QUARTERS_LIGHT ->
                note("trays.advice.quartersLight", percent(reason, 0)).from("source.shapes");
            case QUARTERS_HEAVY ->
                note("trays.advice.quartersHeavy", percent(reason, 0)).from("source.shapes");
            case NO_LEVER -> warn("trays.advice.noLever");
            case END_STOP -> warn("trays.advice.endStop");
            case NO_BETTER -> note("trays.advice.noBetter").from("source.advice");
            case BETTER_EXPECTED -> note("trays.advice.betterExpected").from("source.advice");
            case PAST_NEIGHBOUR -> note("trays.advice.pastNeighbour").from("source.advice");
            case DIRECTION ->
                warn("trays.advice.direction", Arg.text(reason.subject())).from("source.advice");
            case PROBE -> note("trays.advice.probe", Arg.text(reason.subject())).from("source.advice");
            case BACK -> note("trays.advice.back", percent(reason, 0)).from("source.advice");
            case ONE_LEVER -> note("trays.advice.oneLever");
            case TWO_LEVERS -> note("trays.advice.twoLevers");
            case NOT_YET -> warn("trays.advice.notYet");
            case THEN_AGAIN -> note("trays.advice.thenAgain");
            default -> KnownFaultFindings.of(reason);
        };
    }

    private static Finding spoiltTray(AdviceReason reason) {
        return warn(
                        "trays.advice.spoiltTray",
                        Arg.count(Math.round(number(reason, 0))),
                        grams(reason, 1),
                        grams(reason, 2),
                        grams(reason, 3))
                .from("source.spoiltTray")
                .at(TrayPaths.TESTS.pointer());
    }

    /** The side that gets less, where the first number is left less right. */
    private static Arg side(AdviceReason reason) {
        return Arg.word(number(reason, 0) < 0 ? "word.left" : "word.right");
    }

    private static Arg size(AdviceReason reason) {
        return Arg.number(Math.abs(number(reason, 0)), 0, Unit.PERCENT);
    }

    private static Arg grams(AdviceReason reason, int index) {
        return Arg.number(number(reason, index), 1, Unit.G);
    }

    private static double number(AdviceReason reason, int index) {
        return reason.numbers().get(index);
    }

    private static Arg percent(AdviceReason reason, int index) {
        return Arg.number(number(reason, index), 0, Unit.PERCENT);
    }

    private static Finding note(String key, Arg... args) {
        return Finding.note(Step.TRAYS, key, args);
    }

    private static Finding warn(String key, Arg... args) {
        return Finding.warn(Step.TRAYS, key, args);
    }
}
