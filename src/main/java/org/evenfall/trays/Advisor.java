package org.evenfall.trays;

import static org.evenfall.finding.Step.TRAYS;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
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

    /** Most small steps at once. */
    public static final int MOST_STEPS = 3;

    private static final double Z90 = 1.6449;

    private Advisor() {}

    public static Advice advise(AdviceInput input) {
        if (input.tests().isEmpty()) {
            return plain(AdviceKind.DO_A_TEST, Finding.note(TRAYS, "trays.advice.doATest"));
        }
        AdviceInput.DoneTest last = input.tests().get(input.tests().size() - 1);
        Evenness evenness = last.evenness();
        if (last.windMPerS() != null && WeatherGate.USUAL.ask(last.windMPerS()) == WeatherGate.Answer.STOP) {
            return plain(
                    AdviceKind.WAIT_FOR_WIND,
                    Finding.warn(TRAYS, "trays.advice.windy", Arg.number(last.windMPerS(), 1, Unit.M_PER_S)));
        }
        if (evenness.cvPercent() <= GOOD_CV_PERCENT) {
            return plain(
                    AdviceKind.KEEP,
                    Finding.note(
                            TRAYS,
                            "trays.advice.keep",
                            Arg.number(evenness.cvPercent(), 0, Unit.PERCENT),
                            Arg.number(100 * evenness.probabilityAtMost15(), 0, Unit.PERCENT)));
        }
        if (evenness.machineCvPercent() == null || evenness.noisePercent() > 0.7 * evenness.cvPercent()) {
            return plain(
                    AdviceKind.REPEAT_TEST,
                    Finding.warn(TRAYS, "trays.advice.noise", Arg.number(evenness.noisePercent(), 0, Unit.PERCENT)));
        }
        Mode side = mode(evenness, Shapes.LEFT_RIGHT);
        Mode centre = mode(evenness, Shapes.CENTRE_OVERLAP);
        if (side != null
                && side.told()
                && (centre == null || Math.abs(side.amplitudePercent()) > 0.7 * Math.abs(centre.amplitudePercent()))) {
            return oneSided(input, side);
        }
        if (centre == null || !centre.told()) {
            return plain(AdviceKind.CANNOT_TELL_BETTER, Finding.note(TRAYS, "trays.advice.noShape"));
        }
        return lever(input, evenness, centre);
    }

    private static Advice oneSided(AdviceInput input, Mode side) {
        Finding seen = Finding.warn(
                TRAYS,
                "trays.advice.oneSide",
                Arg.word(side.amplitudePercent() < 0 ? "word.left" : "word.right"),
                Arg.number(Math.abs(side.amplitudePercent()), 0, Unit.PERCENT));
        if (!input.levelInOrder()) {
            return plain(AdviceKind.LEVEL_HEIGHT_TYRES, seen, Finding.note(TRAYS, "trays.advice.level"));
        }
        if (!input.ptoInOrder()) {
            return plain(AdviceKind.PTO_SPEED, seen, Finding.note(TRAYS, "trays.advice.pto"));
        }
        return plain(AdviceKind.OUTLETS_AND_VANES, seen, Finding.note(TRAYS, "trays.advice.outlets"));
    }

    private static Advice lever(AdviceInput input, Evenness evenness, Mode centre) {
        boolean wider = centre.amplitudePercent() > 0;
        Finding seen = Finding.note(
                TRAYS,
                wider ? "trays.advice.centreHeavy" : "trays.advice.overlapHeavy",
                Arg.number(Math.abs(centre.amplitudePercent()), 0, Unit.PERCENT));
        AdviceInput.DoneTest last = input.tests().get(input.tests().size() - 1);
        List<Lever> usable = input.levers().stream()
                .filter(lever -> lever.widerSign() != 0 && last.settings().containsKey(lever.label()))
                .toList();
        if (usable.isEmpty()) {
            return plain(AdviceKind.NO_LEVER_LEFT, seen, Finding.warn(TRAYS, "trays.advice.noLever"));
        }
        LeverResponse response = new LeverResponse(input.tests(), usable);
        for (int i = 0; i < usable.size(); i++) {
            if (response.contradicts(i)) {
                return plain(
                        AdviceKind.CONFIRM_DIRECTION,
                        seen,
                        Finding.warn(
                                TRAYS,
                                "trays.advice.direction",
                                Arg.text(usable.get(i).label())));
            }
        }
        Candidate best = best(input, usable, response, last, evenness, centre);
        if (best == null) {
            boolean stuck = usable.stream().allMatch(lever -> room(lever, last, wider) == 0);
            return stuck
                    ? plain(AdviceKind.NO_LEVER_LEFT, seen, Finding.warn(TRAYS, "trays.advice.endStop"))
                    : plain(AdviceKind.CANNOT_TELL_BETTER, seen, Finding.note(TRAYS, "trays.advice.noBetter"));
        }
        return move(usable.get(best.lever()), last, best, evenness, seen);
    }

    /** A move of one lever, in steps towards wider, with what it is expected to do. */
    private record Candidate(int lever, int steps, double cvSquare, double lowSquare, double highSquare) {}

    private static @Nullable Candidate best(
            AdviceInput input,
            List<Lever> usable,
            LeverResponse response,
            AdviceInput.DoneTest last,
            Evenness evenness,
            Mode centre) {
        double share = Shapes.centreOverlapVariance(evenness.positionsM(), input.tramlineWidthM());
        double now = evenness.cvPercent() * evenness.cvPercent();
        double rest = Math.max(0, now - share * centre.amplitudePercent() * centre.amplitudePercent());
        // a move must be worth a test: a tenth off the CV
        double worth = 0.81 * now;
        Candidate best = null;
        for (int i = 0; i < usable.size(); i++) {
            for (int steps = -MOST_STEPS; steps <= MOST_STEPS; steps++) {
                if (steps == 0 || Math.abs(steps) > room(usable.get(i), last, steps > 0)) {
                    continue;
                }
                double amplitude = response.amplitude(i, steps);
                double spread = Math.sqrt(response.variance(i, steps));
                double expected = rest + share * (amplitude * amplitude + spread * spread);
                if (expected < worth && (best == null || expected < best.cvSquare())) {
                    double near = Math.max(0, Math.abs(amplitude) - Z90 * spread);
                    double far = Math.abs(amplitude) + Z90 * spread;
                    best = new Candidate(i, steps, expected, rest + share * near * near, rest + share * far * far);
                }
            }
        }
        return best;
    }

    private static int room(Lever lever, AdviceInput.DoneTest last, boolean wider) {
        Double setting = last.settings().get(lever.label());
        if (setting == null) {
            return 0;
        }
        boolean up = (lever.widerSign() > 0) == wider;
        return up ? lever.stepsUp(setting) : lever.stepsDown(setting);
    }

    private static Advice move(
            Lever lever, AdviceInput.DoneTest last, Candidate best, Evenness evenness, Finding seen) {
        double from = Objects.requireNonNull(last.settings().get(lever.label()));
        int scaleSteps = lever.widerSign() * best.steps();
        LeverMove move = new LeverMove(
                lever.label(), lever.unit(), from, lever.moved(from, scaleSteps), scaleSteps, best.steps() > 0);
        List<Finding> reasons = new ArrayList<>();
        reasons.add(seen);
        reasons.add(Finding.note(TRAYS, "trays.advice.oneLever"));
        if (evenness.verdict() == EvennessVerdict.DO_NOT_SPREAD) {
            reasons.add(Finding.warn(TRAYS, "trays.advice.notYet"));
        }
        reasons.add(Finding.note(TRAYS, "trays.advice.thenAgain"));
        return new Advice(
                AdviceKind.MOVE_LEVER,
                List.of(move),
                Math.sqrt(best.cvSquare()),
                Math.sqrt(best.lowSquare()),
                Math.sqrt(best.highSquare()),
                reasons);
    }

    private static @Nullable Mode mode(Evenness evenness, String name) {
        return evenness.modes().stream()
                .filter(mode -> mode.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private static Advice plain(AdviceKind kind, Finding... reasons) {
        return new Advice(kind, List.of(), null, null, null, List.of(reasons));
    }
}
