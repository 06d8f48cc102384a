package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenfall.machine.Lever;
import org.jspecify.annotations.Nullable;

/** Which lever to move, or back to an earlier setting where no move is expected to be better. */
final class LeverAdvisor {

    /** Assumption: the tests contradict the owner's direction when it keeps less than this probability. */
    private static final double CONTRADICTED = 0.05;

    /** Assumption: what is at least so likely is named, 0 to 1. */
    private static final double POSSIBLE = 0.2;

    /** Assumption: a move is worth a test when it is expected to take this off the field CV, points. */
    private static final double WORTH_PERCENT = 0.3;

    /** Assumption: the same where the tray CV is good already. */
    private static final double WORTH_WHERE_GOOD_PERCENT = 1.5;

    private final AdviceInput input;
    private final TestsBySetting bySetting;
    private final AdviceInput.DoneTest last;

    /** @param input with at least one test */
    LeverAdvisor(AdviceInput input, TestsBySetting bySetting) {
        this.input = input;
        this.bySetting = bySetting;
        this.last = input.last();
    }

    /**
     * The next move of a lever.
     *
     * @param shape the shapes of the last setting
     * @param now its verdict
     * @param before reasons so far
     */
    Advice next(Diagnosis shape, EvennessVerdict now, List<AdviceReason> before) {
        List<AdviceReason> reasons = new ArrayList<>(before);
        evenShape(shape).ifPresent(reasons::add);
        List<Lever> usable = input.levers().levers().stream()
                .filter(lever -> last.settings().containsKey(lever.label()))
                .toList();
        if (usable.isEmpty()) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.NO_LEVER));
            return Advice.withoutMove(AdviceKind.NO_LEVER_LEFT, reasons);
        }
        ResponseModel model = new ResponseModel(
                input.tests(),
                bySetting.pool(last).evenness(),
                shape,
                usable,
                input.tramlines(),
                input.machineOrder().skipped());
        MoveChooser chooser = new MoveChooser(usable, last.settings(), lastSteps(usable), model);
        String doubted = doubted(usable, model);
        if (model.probabilityFolded() > POSSIBLE) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.PAST_NEIGHBOUR));
        }
        boolean good = bySetting.pool(last).evenness().cvPercent() <= CvLimits.GOOD_PERCENT;
        int[] best = chooser.best(input.levers().twoAtOnce(), good ? WORTH_WHERE_GOOD_PERCENT : WORTH_PERCENT);
        ExpectedCv expected = best == null ? null : model.expected(best);
        if (best != null
                && expected != null
                && expected.percent() < bySetting.pool(last).evenness().cvPercent()) {
            if (!doubted.isEmpty()) {
                reasons.add(AdviceReason.about(AdviceReason.Kind.DIRECTION, doubted));
            }
            if (evenShape(shape).isEmpty()) {
                reasons.add(AdviceReason.of(AdviceReason.Kind.BETTER_EXPECTED));
            }
            Advice move = move(chooser.moves(best), expected, model.expectedField(best), now, reasons);
            return chooser.takesBack(best) ? move.asBack() : move;
        }
        if (!doubted.isEmpty()) {
            reasons.add(AdviceReason.about(AdviceReason.Kind.DIRECTION, doubted));
            return Advice.withoutMove(AdviceKind.CONFIRM_DIRECTION, reasons);
        }
        Advice back = back(reasons);
        if (back != null) {
            return back;
        }
        int[] probe = good ? null : chooser.probe();
        if (probe != null) {
            List<LeverMove> moves = chooser.moves(probe);
            reasons.add(AdviceReason.about(AdviceReason.Kind.PROBE, moves.get(0).lever()));
            return move(moves, model.expected(probe), model.expectedField(probe), now, reasons)
                    .asProbe();
        }
        if (shape.centre().significant() && chooser.atEndStop(shape.centre().amplitudePercent() > 0)) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.END_STOP));
            return Advice.withoutMove(AdviceKind.NO_LEVER_LEFT, reasons);
        }
        reasons.add(
                AdviceReason.of(evenShape(shape).isEmpty() ? AdviceReason.Kind.NO_SHAPE : AdviceReason.Kind.NO_BETTER));
        return Advice.withoutMove(AdviceKind.CANNOT_TELL_BETTER, reasons);
    }

    /** Label of the first lever whose direction the tests contradict; empty where there is none. */
    private static String doubted(List<Lever> levers, ResponseModel model) {
        for (int j = 0; j < levers.size(); j++) {
            if (contradicted(levers.get(j), model.probabilityEmptiesMiddle(j))) {
                return levers.get(j).label();
            }
        }
        return "";
    }

    /** Steps up the scale that each lever was moved from the test before the last setting. */
    private int[] lastSteps(List<Lever> levers) {
        int[] steps = new int[levers.size()];
        for (int i = input.tests().size() - 2; i >= 0; i--) {
            AdviceInput.DoneTest before = input.tests().get(i);
            if (!LeverSettings.same(levers, before.settings(), last.settings())) {
                for (int j = 0; j < steps.length; j++) {
                    Double from = before.settings().get(levers.get(j).label());
                    Double to = last.settings().get(levers.get(j).label());
                    steps[j] = from == null || to == null
                            ? 0
                            : (int) Math.round((to - from) / levers.get(j).step());
                }
                return steps;
            }
        }
        return steps;
    }

    /** The shape that both sides have in common, where one is significant. */
    private static Optional<AdviceReason> evenShape(Diagnosis shape) {
        if (shape.centre().significant()) {
            double amplitude = shape.centre().amplitudePercent();
            return Optional.of(AdviceReason.of(
                    amplitude > 0 ? AdviceReason.Kind.CENTRE_HEAVY : AdviceReason.Kind.OVERLAP_HEAVY,
                    Math.abs(amplitude)));
        }
        if (shape.quarter().significant()) {
            double amplitude = shape.quarter().amplitudePercent();
            return Optional.of(AdviceReason.of(
                    amplitude > 0 ? AdviceReason.Kind.QUARTERS_LIGHT : AdviceReason.Kind.QUARTERS_HEAVY,
                    Math.abs(amplitude)));
        }
        return Optional.empty();
    }

    static boolean contradicted(Lever lever, double probabilityEmptiesMiddle) {
        int owners = lever.widerSign();
        double right = owners > 0 ? probabilityEmptiesMiddle : 1 - probabilityEmptiesMiddle;
        return owners != 0 && right < CONTRADICTED;
    }

    private static Advice move(
            List<LeverMove> moves,
            ExpectedCv expected,
            ExpectedCv expectedField,
            EvennessVerdict now,
            List<AdviceReason> reasons) {
        reasons.add(AdviceReason.of(moves.size() == 1 ? AdviceReason.Kind.ONE_LEVER : AdviceReason.Kind.TWO_LEVERS));
        if (now == EvennessVerdict.DO_NOT_SPREAD) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.NOT_YET));
        }
        reasons.add(AdviceReason.of(AdviceReason.Kind.THEN_AGAIN));
        return Advice.move(moves, expected, expectedField, reasons);
    }

    /** Back to an earlier setting that did clearly better; null without one. */
    @Nullable
    Advice back(List<AdviceReason> before) {
        AdviceInput.DoneTest better = bySetting.clearlyBetterThan(last);
        List<LeverMove> moves = better == null ? List.of() : movesTo(better);
        if (better == null || moves.isEmpty()) {
            return null;
        }
        Uniformity then = bySetting.pool(better).evenness();
        List<AdviceReason> reasons = new ArrayList<>(before);
        reasons.add(AdviceReason.of(AdviceReason.Kind.BACK, then.cvPercent()));
        return Advice.move(
                        moves,
                        new ExpectedCv(then.cvPercent(), then.cv().intervalPercent()),
                        new ExpectedCv(
                                then.field().medianPercent(), then.field().intervalPercent()),
                        reasons)
                .asBack();
    }

    private List<LeverMove> movesTo(AdviceInput.DoneTest earlier) {
        List<LeverMove> moves = new ArrayList<>();
        for (Lever lever : input.levers().levers()) {
            Double from = last.settings().get(lever.label());
            Double to = earlier.settings().get(lever.label());
            int steps = from == null || to == null ? 0 : (int) Math.round((to - from) / lever.step());
            if (from != null && to != null && steps != 0) {
                moves.add(new LeverMove(lever.label(), lever.unit(), from, to, steps, steps * lever.widerSign() > 0));
            }
        }
        return moves;
    }
}
