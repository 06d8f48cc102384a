package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What to do next. Order of cure: repeat a doubtful test, wait for the wind, put level, height and tyres right, the shaft
 * speed, outlets and vanes, and only then one lever by the smallest sensible move. One side alone is never answered with
 * a lever.
 */
public final class Advisor {

    /**
     * Assumption: the tray CV of an even field above which a further move is considered, %: below it a move cannot be worth
     * its test.
     */
    private static final double GOOD_ENOUGH_PERCENT = CvLimits.GOOD_PERCENT - MoveChooser.WORTH_PERCENT;

    /** Assumption: what a further move must be expected to take off the CV of a field that is even already, points. */
    private static final double CLEARLY_BETTER_PERCENT = 0.5;

    /** Assumption: noise above this share of the CV, which is half of its square, hides the machine. */
    private static final double NOISY_SHARE = 0.7;

    /** Assumption: with so many repeats of one setting the noise is accepted. */
    private static final int MOST_REPEATS = 3;

    private final AdviceInput input;
    private final AdviceInput.DoneTest last;
    private final TestsBySetting.Pool pool;
    private final Optional<Diagnosis> diagnosis;
    private final LeverAdvisor levers;

    private Advisor(AdviceInput input, Supplier<List<ShapeCurve>> curves) {
        this.input = input;
        this.last = input.last();
        TestsBySetting bySetting = new TestsBySetting(input);
        this.pool = bySetting.pool(last);
        this.diagnosis = Diagnosis.of(pool.evenness());
        this.levers = new LeverAdvisor(input, curves, bySetting);
    }

    /**
     * The next move; repeats of one setting are taken together.
     *
     * @param curves what is known before any test of how the machine answers, asked for only when a lever is to move
     */
    public static Advice advise(AdviceInput input, Supplier<List<ShapeCurve>> curves) {
        return input.tests().isEmpty()
                ? Advice.withoutMove(AdviceKind.DO_A_TEST, List.of(AdviceReason.of(AdviceReason.Kind.DO_A_TEST)))
                : new Advisor(input, curves).next();
    }

    private Advice next() {
        if (last.windMPerS() != null && input.windLimits().classify(last.windMPerS()) == WindLimits.Strength.STOP) {
            return Advice.withoutMove(
                    AdviceKind.WAIT_FOR_WIND, List.of(AdviceReason.of(AdviceReason.Kind.WINDY, last.windMPerS())));
        }
        List<AdviceReason> reasons = new ArrayList<>();
        if (pool.tests() > 1) {
            reasons.add(AdviceReason.of(
                    AdviceReason.Kind.POOLED, pool.tests(), pool.evenness().cvPercent()));
        }
        return pool.evenness().verdict() == EvennessVerdict.EVEN ? even(reasons) : notEven(reasons);
    }

    private Advice even(List<AdviceReason> reasons) {
        Advice further = furtherMove(reasons);
        if (further != null) {
            return further;
        }
        FieldCv field = pool.evenness().field();
        reasons.add(AdviceReason.of(AdviceReason.Kind.KEEP, field.medianPercent(), field.statedChancePercent()));
        return Advice.withoutMove(AdviceKind.KEEP, reasons);
    }

    /** A further move from an even field, where its tray CV is not small and the move is clearly better; else null. */
    private @Nullable Advice furtherMove(List<AdviceReason> reasons) {
        double cvPercent = pool.evenness().cvPercent();
        Diagnosis shape = diagnosis.orElse(null);
        if (cvPercent <= GOOD_ENOUGH_PERCENT || shape == null || !shape.hasEvenShape() || shape.oneSided()) {
            return null;
        }
        List<AdviceReason> further = new ArrayList<>(reasons);
        further.add(AdviceReason.of(AdviceReason.Kind.JUST_UNDER, cvPercent));
        Advice move = levers.next(shape, EvennessVerdict.EVEN, further);
        ExpectedCv expected = move.expected();
        return expected != null && expected.percent() < cvPercent - CLEARLY_BETTER_PERCENT ? move : null;
    }

    private Advice notEven(List<AdviceReason> reasons) {
        CvEstimate cv = pool.evenness().cv();
        if (noisy(cv) && pool.tests() < MOST_REPEATS) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.NOISE, cv.noisePercent()));
            return Advice.withoutMove(AdviceKind.REPEAT_TEST, reasons);
        }
        Diagnosis shape = diagnosis.orElse(null);
        if (shape != null && shape.oneSided() && (!input.machineOrder().all() || shape.onlyOneSided())) {
            return oneSided(reasons);
        }
        if (shape == null || !shape.hasEvenShape()) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.NO_SHAPE));
            return levers.back(reasons, AdviceKind.CANNOT_TELL_BETTER);
        }
        return levers.next(shape, pool.evenness().verdict(), reasons);
    }

    private static boolean noisy(CvEstimate cv) {
        return cv.machinePercent() == null || cv.noisePercent() > NOISY_SHARE * cv.percent();
    }

    private Advice oneSided(List<AdviceReason> reasons) {
        reasons.add(AdviceReason.of(
                AdviceReason.Kind.ONE_SIDE,
                pool.evenness().contrasts().leftRight().percent()));
        if (!input.machineOrder().level()) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.LEVEL_FIRST));
            return Advice.withoutMove(AdviceKind.LEVEL_HEIGHT_TYRES, reasons);
        }
        if (!input.machineOrder().pto()) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.PTO_FIRST));
            return Advice.withoutMove(AdviceKind.PTO_SPEED, reasons);
        }
        reasons.add(AdviceReason.of(AdviceReason.Kind.OUTLETS_FIRST));
        return Advice.withoutMove(AdviceKind.OUTLETS_AND_VANES, reasons);
    }
}
