package org.evenfall.trays;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * One reason of an advice: a kind with its numbers; the sentence is made elsewhere.
 *
 * @param kind which reason
 * @param numbers its numbers, in the order and unit that the kind states
 * @param subject what it is about: the owner's label of the lever or the vane, or the name of the constant of the part of
 *     the machine check; empty when it is about none
 */
public record AdviceReason(Kind kind, List<Double> numbers, String subject) {

    /** The reasons, each with the numbers it carries. */
    public enum Kind {
        /** There is no test yet. */
        DO_A_TEST(0),
        /** The last test was driven in too strong a wind: wind, m/s. */
        WINDY(1),
        /** Repeats taken together: number of tests, their CV in %. */
        POOLED(2),
        /** The field is even: field CV in %, chance of at most 15 % in %. */
        KEEP(2),
        /** The field is even, but its tray CV is not small; one may stop: tray CV in %. */
        JUST_UNDER(1),
        /** A part failed at the machine check, its constant is the subject. */
        PART_FAILED(0),
        /** A vane is worn beyond the limit, its label is the subject: side (−1 left, 1 right), wear in mm. */
        VANE_WORN(2),
        /** A vane is bent, rough or holed, its label is the subject: side (−1 left, 1 right). */
        VANE_FAILED(1),
        /** The frame is not level: difference in cm. */
        LEVEL_OFF(1),
        /** Tyre pressures differ: difference in bar. */
        TYRES_OFF(1),
        /** The PTO speed is off: measured and wanted, rpm. */
        PTO_OFF(2),
        /** The PTO speed is outside what the handbook allows: measured, rpm. */
        PTO_BEYOND(1),
        /** The outlets differ in the bucket: left less right, % of their mean. */
        OUTLETS_UNEQUAL(1),
        /** The product is slightly damp. */
        PRODUCT_DAMP(0),
        /** The product is caked. */
        PRODUCT_CAKED(0),
        /** The guards were not looked at yet. */
        GUARDS_UNSEEN(0),
        /** The vanes were not looked at yet. */
        VANES_UNSEEN(0),
        /** The PTO speed was not measured yet. */
        PTO_UNSEEN(0),
        /** The outlets were not caught yet. */
        OUTLETS_UNSEEN(0),
        /** Put that right before a lever is moved. */
        MEND_FIRST(0),
        /** Look at that before a lever is moved. */
        LOOK_FIRST(0),
        /** The field is even; put that right all the same. */
        MEND_ALL_THE_SAME(0),
        /** A tray does not fit the others: its number from 1, its catch, and what the others allow, from and to, g. */
        SPOILT_TRAY(4),
        /** A tray on the same place is as doubtful: its number from 1. */
        TWIN_TRAY(1),
        /** Type it again or leave it blank. */
        TYPE_OR_BLANK(0),
        /** Type it again or repeat the test: too few trays to leave one blank. */
        TYPE_OR_REPEAT(0),
        /** Noise hides the machine: noise in %, how many more runs. */
        NOISE(2),
        /** One side gets less: left less right, % of the mean, and how far from the tramline, m. */
        ONE_SIDE(2),
        /** First level, height and tyres. */
        LEVEL_FIRST(0),
        /** First the PTO speed. */
        PTO_FIRST(0),
        /** First outlets and vanes. */
        OUTLETS_FIRST(0),
        /** All was in order: look at the vanes of the side that gets less again: left less right, %. */
        VANES_AGAIN(1),
        /** One side still gets less and nothing was found: left less right, % of the mean. */
        STILL_ONE_SIDE(1),
        /** No shape is significant. */
        NO_SHAPE(0),
        /** Too much at the tramline: amplitude in %. */
        CENTRE_HEAVY(1),
        /** Too much midway to the next tramline: amplitude in %. */
        OVERLAP_HEAVY(1),
        /** Too little at the quarter points: amplitude in %. */
        QUARTERS_LIGHT(1),
        /** Too much at the quarter points: amplitude in %. */
        QUARTERS_HEAVY(1),
        /** No lever with a setting. */
        NO_LEVER(0),
        /** Every lever is at its end stop. */
        END_STOP(0),
        /** No small move is expected to be better. */
        NO_BETTER(0),
        /** No shape is significant, but the tests together say that the move is better. */
        BETTER_EXPECTED(0),
        /** The throw probably reaches past the neighbouring tramline, so that wider fills the centre. */
        PAST_NEIGHBOUR(0),
        /** The tests contradict the owner's direction of the lever. */
        DIRECTION(0),
        /** Nobody knows which way the lever works: a move that will show it. */
        PROBE(0),
        /** An earlier setting did better: its CV in %. */
        BACK(1),
        /** Move this one lever only. */
        ONE_LEVER(0),
        /** Move these levers only. */
        TWO_LEVERS(0),
        /** Do not spread with the settings as they were. */
        NOT_YET(0),
        /** Then test again. */
        THEN_AGAIN(0);

        /** Those that can decide an advice, the ones that decide first. The others only explain. */
        static final List<Kind> DECISIVE = List.of(
                DO_A_TEST,
                PROBE,
                BACK,
                WINDY,
                PART_FAILED,
                VANE_WORN,
                VANE_FAILED,
                LEVEL_OFF,
                TYRES_OFF,
                PTO_OFF,
                PTO_BEYOND,
                OUTLETS_UNEQUAL,
                PRODUCT_DAMP,
                PRODUCT_CAKED,
                GUARDS_UNSEEN,
                VANES_UNSEEN,
                PTO_UNSEEN,
                OUTLETS_UNSEEN,
                SPOILT_TRAY,
                NOISE,
                KEEP,
                ONE_SIDE,
                NO_LEVER,
                END_STOP,
                DIRECTION,
                NO_BETTER,
                CENTRE_HEAVY,
                OVERLAP_HEAVY,
                QUARTERS_LIGHT,
                QUARTERS_HEAVY,
                BETTER_EXPECTED,
                NO_SHAPE);

        private final int count;

        Kind(int count) {
            this.count = count;
        }

        /** How many numbers it carries. */
        public int count() {
            return count;
        }
    }

    /** @throws IllegalArgumentException when the kind carries another number of numbers */
    public AdviceReason {
        numbers = List.copyOf(numbers);
        if (numbers.size() != kind.count) {
            throw new IllegalArgumentException(kind + " carries " + kind.count + " numbers: " + numbers);
        }
    }

    /** The owner's label of the lever, where it is about one. */
    public String lever() {
        return subject;
    }

    /** A reason about nothing by name. */
    public static AdviceReason of(Kind kind, double... numbers) {
        return about(kind, "", numbers);
    }

    /** A reason about a lever, a vane or a part. */
    public static AdviceReason about(Kind kind, String subject, double... numbers) {
        return new AdviceReason(kind, DoubleStream.of(numbers).boxed().toList(), subject);
    }
}
