package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What to do next. Order of cure: what is known to be wrong with machine or product, wait for the wind, look at what was
 * not looked at, repeat a doubtful test, level, PTO speed, outlets and vanes where one side gets less, and only then one
 * lever by the smallest sensible move. An even field is kept whatever is known, and the fault is named.
 */
public final class Advisor {

    private final AdviceInput input;
    private final AdviceInput.DoneTest last;
    private final TestsBySetting.Pool pool;
    private final Optional<Diagnosis> diagnosis;
    private final RepeatAdvisor repeats;
    private final SideAdvisor side;
    private final LeverAdvisor levers;

    private Advisor(AdviceInput input) {
        this.input = input;
        this.last = input.last();
        TestsBySetting bySetting = new TestsBySetting(input);
        this.pool = bySetting.pool(last);
        this.diagnosis = Diagnosis.of(pool.evenness());
        this.repeats = new RepeatAdvisor(input, bySetting, pool);
        this.side = new SideAdvisor(input, pool.evenness());
        this.levers = new LeverAdvisor(input, bySetting);
    }

    /** The next move; repeats of one setting are taken together. */
    public static Advice advise(AdviceInput input) {
        return input.tests().isEmpty()
                ? Advice.withoutMove(AdviceKind.DO_A_TEST, List.of(AdviceReason.of(AdviceReason.Kind.DO_A_TEST)))
                : new Advisor(input).next();
    }

    private Advice next() {
        List<AdviceReason> reasons = new ArrayList<>();
        boolean even = pool.evenness().verdict() == EvennessVerdict.EVEN;
        Optional<KnownFault> fault = input.machineOrder().firstSeen();
        if (!even && fault.isPresent()) {
            return mend(fault.get(), reasons);
        }
        if (last.windMPerS() != null && input.windLimits().classify(last.windMPerS()) == WindLimits.Strength.STOP) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.WINDY, last.windMPerS()));
            return Advice.withoutMove(AdviceKind.WAIT_FOR_WIND, reasons);
        }
        if (pool.tests() > 1) {
            reasons.add(AdviceReason.of(
                    AdviceReason.Kind.POOLED, pool.tests(), pool.evenness().cvPercent()));
        }
        return even ? even(reasons) : notEven(reasons);
    }

    /** What is known, and that it comes before a lever. */
    private static Advice mend(KnownFault fault, List<AdviceReason> before) {
        List<AdviceReason> reasons = new ArrayList<>(before);
        reasons.add(fault.evidence());
        reasons.add(AdviceReason.of(fault.seen() ? AdviceReason.Kind.MEND_FIRST : AdviceReason.Kind.LOOK_FIRST));
        return Advice.withoutMove(fault.kind(), reasons);
    }

    private Advice even(List<AdviceReason> reasons) {
        Advice further = further(reasons);
        if (further != null) {
            return further;
        }
        FieldCv field = pool.evenness().field();
        reasons.add(AdviceReason.of(AdviceReason.Kind.KEEP, field.medianPercent(), field.statedChancePercent()));
        List<AdviceReason> known = input.machineOrder().faults().stream()
                .filter(KnownFault::seen)
                .map(KnownFault::evidence)
                .toList();
        reasons.addAll(known);
        if (!known.isEmpty()) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.MEND_ALL_THE_SAME));
        } else if (side.oneSided()) {
            reasons.add(side.evidence());
        }
        return Advice.withoutMove(AdviceKind.KEEP, reasons);
    }

    /** What is still worth a test on an even field; null where nothing is. */
    private @Nullable Advice further(List<AdviceReason> reasons) {
        double cvPercent = pool.evenness().cvPercent();
        Diagnosis shape = diagnosis.orElse(null);
        boolean good = cvPercent <= CvLimits.GOOD_PERCENT;
        if (shape == null || !input.machineOrder().faults().isEmpty() || repeats.spoiltTray(reasons) != null) {
            return null;
        }
        List<AdviceReason> further = new ArrayList<>(reasons);
        further.add(AdviceReason.of(AdviceReason.Kind.JUST_UNDER, cvPercent));
        if (side.matters()) {
            Advice first = good ? null : side.advice(further, shape.hasEvenShape());
            if (good || first != null) {
                return first;
            }
        }
        Advice move = levers.next(shape, EvennessVerdict.EVEN, further);
        return move.kind() == AdviceKind.MOVE_LEVER ? move : null;
    }

    private Advice notEven(List<AdviceReason> reasons) {
        Optional<KnownFault> unseen = input.machineOrder().firstUnseen();
        if (unseen.isPresent()) {
            return mend(unseen.get(), reasons);
        }
        Advice repeat = repeats.spoiltTray(reasons);
        if (repeat == null) {
            repeat = repeats.moreRuns(reasons);
        }
        if (repeat != null) {
            return repeat;
        }
        Diagnosis shape = diagnosis.orElse(null);
        boolean evenShape = shape != null && shape.hasEvenShape();
        if (evenShape ? side.matters() : side.oneSided()) {
            Advice first = side.advice(reasons, evenShape);
            if (first != null) {
                return first;
            }
        }
        if (shape == null) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.NO_SHAPE));
            Advice back = levers.back(reasons);
            return back == null ? Advice.withoutMove(AdviceKind.CANNOT_TELL_BETTER, reasons) : back;
        }
        return named(levers.next(shape, pool.evenness().verdict(), reasons));
    }

    /** The lever that is asked about is named in the advice too. */
    private static Advice named(Advice advice) {
        return advice.reasons().stream()
                .filter(reason -> reason.kind() == AdviceReason.Kind.DIRECTION)
                .findFirst()
                .map(reason -> advice.about(reason.subject()))
                .orElse(advice);
    }
}
