package org.evenfall.trays;

import static org.evenfall.finding.Step.TRAYS;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What to do next. Order of cure: repeat a doubtful test, wait for the wind, put level, height and tyres right, the shaft
 * speed, outlets and vanes, and only then one lever by the smallest sensible move. One side alone is never answered with
 * a lever.
 */
public final class Advisor {

    /** A CV to be content with, %. */
    public static final double GOOD_CV_PERCENT = 10;

    /** Nearer to the good one than a move must be worth, a CV may be good by luck, %. Ours. */
    private static final double SURELY_GOOD_PERCENT = GOOD_CV_PERCENT - MoveChooser.WORTH_PERCENT;

    /** What a further move must be expected to take off a CV that is good already, points. Ours. */
    private static final double CLEARLY_BETTER_PERCENT = 2;

    /** Most small steps at once. */
    public static final int MOST_STEPS = 3;

    /** One side is the matter when it is more than this share of what both sides have in common. Ours. */
    private static final double ONE_SIDED = 0.7;

    /** And it is the only matter, whatever was measured in the yard, above this share. Ours. */
    private static final double ONE_SIDE_ALONE = 2;

    /** Repeats of one setting after which the noise is taken as it is. Ours. */
    private static final int MOST_REPEATS = 3;

    /** The tests speak against the owner's direction when it keeps less than this chance. Ours. */
    private static final double CONTRADICTED = 0.05;

    private Advisor() {}

    /**
     * The next move; with repeats of one setting taken together.
     *
     * @param curves what is known before any test of how the machine answers, asked for only when a lever is to move
     */
    public static Advice advise(AdviceInput input, Supplier<List<ShapeCurve>> curves) {
        if (input.tests().isEmpty()) {
            return plain(AdviceKind.DO_A_TEST, Finding.note(TRAYS, "trays.advice.doATest"));
        }
        AdviceInput.DoneTest last = input.tests().get(input.tests().size() - 1);
        TestsBySetting settings = new TestsBySetting(input.levers(), input.tramlineWidthM(), input.driving());
        TestsBySetting.Pool pool = settings.pool(input.tests(), last);
        Uniformity evenness = pool.evenness();
        if (last.windMPerS() != null && input.gate().classify(last.windMPerS()) == WindLimits.Answer.STOP) {
            return plain(
                    AdviceKind.WAIT_FOR_WIND,
                    Finding.warn(TRAYS, "trays.advice.windy", Arg.number(last.windMPerS(), 1, Unit.M_PER_S)));
        }
        List<Finding> seen = new ArrayList<>();
        if (pool.tests() > 1) {
            seen.add(Finding.note(
                    TRAYS,
                    "trays.advice.pooled",
                    Arg.count(pool.tests()),
                    Arg.number(evenness.cvPercent(), 0, Unit.PERCENT)));
        }
        if (evenness.cvPercent() <= GOOD_CV_PERCENT) {
            Advice more = justUnder(input, curves, settings, last, evenness, seen);
            if (more != null) {
                return more;
            }
            seen.add(Finding.note(
                    TRAYS,
                    "trays.advice.keep",
                    Arg.number(evenness.cvPercent(), 0, Unit.PERCENT),
                    Arg.number(100 * evenness.probabilityAtMost15(), 0, Unit.PERCENT)));
            return plain(AdviceKind.KEEP, seen);
        }
        boolean noisy = evenness.machineCvPercent() == null || evenness.noisePercent() > 0.7 * evenness.cvPercent();
        if (noisy && pool.tests() < MOST_REPEATS) {
            seen.add(Finding.warn(TRAYS, "trays.advice.noise", Arg.number(evenness.noisePercent(), 0, Unit.PERCENT)));
            return plain(AdviceKind.REPEAT_TEST, seen);
        }
        SpreadShape side = ResponseModel.mode(evenness, Shapes.LEFT_RIGHT);
        SpreadShape centre = ResponseModel.mode(evenness, Shapes.CENTRE_OVERLAP);
        SpreadShape quarter = ResponseModel.mode(evenness, Shapes.QUARTER_POINTS);
        double both = Math.max(told(centre), told(quarter));
        if (told(side) > ONE_SIDED * both) {
            boolean inOrder = input.levelInOrder() && input.ptoInOrder() && input.outletsInOrder();
            if (!inOrder || told(side) > ONE_SIDE_ALONE * both) {
                return oneSided(input, evenness, seen);
            }
        }
        if (centre == null || both == 0) {
            seen.add(Finding.note(TRAYS, "trays.advice.noShape"));
            return back(input, settings, last, seen, AdviceKind.CANNOT_TELL_BETTER);
        }
        return lever(input, curves, settings, last, evenness, centre, quarter, seen);
    }

    /**
     * A CV read just under the good one may be so by luck: where a move is expected to make it clearly better, that move;
     * null where it is not.
     */
    private static @Nullable Advice justUnder(
            AdviceInput input,
            Supplier<List<ShapeCurve>> curves,
            TestsBySetting settings,
            AdviceInput.DoneTest last,
            Uniformity evenness,
            List<Finding> seen) {
        SpreadShape side = ResponseModel.mode(evenness, Shapes.LEFT_RIGHT);
        SpreadShape centre = ResponseModel.mode(evenness, Shapes.CENTRE_OVERLAP);
        SpreadShape quarter = ResponseModel.mode(evenness, Shapes.QUARTER_POINTS);
        double both = Math.max(told(centre), told(quarter));
        if (evenness.cvPercent() <= SURELY_GOOD_PERCENT
                || centre == null
                || !centre.significant()
                || told(side) > ONE_SIDED * both) {
            return null;
        }
        List<Finding> reasons = new ArrayList<>(seen);
        reasons.add(Finding.note(TRAYS, "trays.advice.justUnder", Arg.number(evenness.cvPercent(), 0, Unit.PERCENT)));
        Advice more = lever(input, curves, settings, last, evenness, centre, quarter, reasons);
        boolean clearly = more.kind() == AdviceKind.MOVE_LEVER
                && more.expectedCvPercent() != null
                && more.expectedCvPercent() < evenness.cvPercent() - CLEARLY_BETTER_PERCENT;
        return clearly ? more : null;
    }

    /** Size of a shape that stands out of the noise, %; else 0. */
    private static double told(@Nullable SpreadShape mode) {
        return mode != null && mode.significant() ? Math.abs(mode.amplitudePercent()) : 0;
    }

    private static Advice oneSided(AdviceInput input, Uniformity evenness, List<Finding> seen) {
        seen.add(Finding.warn(
                TRAYS,
                "trays.advice.oneSide",
                Arg.word(evenness.leftRightPercent() < 0 ? "word.left" : "word.right"),
                Arg.number(Math.abs(evenness.leftRightPercent()), 0, Unit.PERCENT)));
        AdviceKind kind = AdviceKind.OUTLETS_AND_VANES;
        String cure = "trays.advice.outlets";
        if (!input.levelInOrder()) {
            kind = AdviceKind.LEVEL_HEIGHT_TYRES;
            cure = "trays.advice.level";
        } else if (!input.ptoInOrder()) {
            kind = AdviceKind.PTO_SPEED;
            cure = "trays.advice.pto";
        }
        seen.add(Finding.note(TRAYS, cure));
        return plain(kind, seen);
    }

    private static Advice lever(
            AdviceInput input,
            Supplier<List<ShapeCurve>> curves,
            TestsBySetting settings,
            AdviceInput.DoneTest last,
            Uniformity evenness,
            SpreadShape centre,
            @Nullable SpreadShape quarter,
            List<Finding> seen) {
        boolean wider = centre.amplitudePercent() > 0;
        if (centre.significant()) {
            seen.add(Finding.note(
                    TRAYS,
                    wider ? "trays.advice.centreHeavy" : "trays.advice.overlapHeavy",
                    Arg.number(Math.abs(centre.amplitudePercent()), 0, Unit.PERCENT)));
        } else if (quarter != null) {
            seen.add(Finding.note(
                    TRAYS,
                    quarter.amplitudePercent() > 0 ? "trays.advice.quartersLight" : "trays.advice.quartersHeavy",
                    Arg.number(Math.abs(quarter.amplitudePercent()), 0, Unit.PERCENT)));
        }
        List<Lever> usable = input.levers().stream()
                .filter(lever -> last.settings().containsKey(lever.label()))
                .toList();
        if (usable.isEmpty()) {
            seen.add(Finding.warn(TRAYS, "trays.advice.noLever"));
            return plain(AdviceKind.NO_LEVER_LEFT, seen);
        }
        ResponseModel model = new ResponseModel(input.tests(), usable, curves.get(), input.tramlineWidthM());
        for (int j = 0; j < usable.size(); j++) {
            int told = usable.get(j).widerSign();
            double right = told > 0 ? model.widerUp(j) : 1 - model.widerUp(j);
            if (told != 0 && right < CONTRADICTED) {
                seen.add(Finding.warn(
                        TRAYS, "trays.advice.direction", Arg.text(usable.get(j).label())));
                return plain(AdviceKind.CONFIRM_DIRECTION, seen);
            }
        }
        MoveChooser chooser = new MoveChooser(
                usable, last.settings(), model, input.tests(), quarter != null && quarter.significant());
        int[] best = chooser.best(input.twoLevers());
        if (best == null) {
            boolean stuck = centre.significant() && chooser.stuck(wider);
            seen.add(
                    stuck ? Finding.warn(TRAYS, "trays.advice.endStop") : Finding.note(TRAYS, "trays.advice.noBetter"));
            return back(input, settings, last, seen, stuck ? AdviceKind.NO_LEVER_LEFT : AdviceKind.CANNOT_TELL_BETTER);
        }
        return move(chooser.moves(best), model.outlook(best), evenness, seen);
    }

    /** Nothing better is in sight: where an earlier setting did clearly better, back to that one. */
    private static Advice back(
            AdviceInput input,
            TestsBySetting settings,
            AdviceInput.DoneTest last,
            List<Finding> seen,
            AdviceKind otherwise) {
        AdviceInput.DoneTest better = settings.better(input.tests(), last);
        if (better == null) {
            return plain(otherwise, seen);
        }
        Uniformity then = settings.pool(input.tests(), better).evenness();
        List<LeverMove> moves = new ArrayList<>();
        for (Lever lever : input.levers()) {
            Double from = last.settings().get(lever.label());
            Double to = better.settings().get(lever.label());
            if (from != null && to != null) {
                int steps = (int) Math.round((to - from) / lever.step());
                if (steps != 0) {
                    moves.add(
                            new LeverMove(lever.label(), lever.unit(), from, to, steps, steps * lever.widerSign() > 0));
                }
            }
        }
        if (moves.isEmpty()) {
            return plain(otherwise, seen);
        }
        seen.add(Finding.note(TRAYS, "trays.advice.back", Arg.number(then.cvPercent(), 0, Unit.PERCENT)));
        return new Advice(
                AdviceKind.MOVE_LEVER, moves, then.cvPercent(), then.cvLowPercent(), then.cvHighPercent(), seen);
    }

    private static Advice move(
            List<LeverMove> moves, ResponseModel.Outlook outlook, Uniformity evenness, List<Finding> seen) {
        seen.add(Finding.note(TRAYS, moves.size() == 1 ? "trays.advice.oneLever" : "trays.advice.twoLevers"));
        if (evenness.verdict() == EvennessVerdict.DO_NOT_SPREAD) {
            seen.add(Finding.warn(TRAYS, "trays.advice.notYet"));
        }
        seen.add(Finding.note(TRAYS, "trays.advice.thenAgain"));
        return new Advice(
                AdviceKind.MOVE_LEVER,
                moves,
                Math.sqrt(outlook.square()),
                Math.min(outlook.low(), Math.sqrt(outlook.square())),
                Math.max(outlook.high(), Math.sqrt(outlook.square())),
                seen);
    }

    private static Advice plain(AdviceKind kind, Finding reason) {
        return plain(kind, List.of(reason));
    }

    private static Advice plain(AdviceKind kind, List<Finding> reasons) {
        return new Advice(kind, List.of(), null, null, null, reasons);
    }
}
