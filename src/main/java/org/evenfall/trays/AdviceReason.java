package org.evenfall.trays;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * One reason of an advice: a kind with its numbers; the sentence is made elsewhere.
 *
 * @param kind which reason
 * @param numbers its numbers, in the order and unit that the kind states
 * @param lever the owner's label of the lever it is about; empty when it is about none
 */
public record AdviceReason(Kind kind, List<Double> numbers, String lever) {

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
        /** The field is even, but a further move is expected to be worth it: tray CV in %. */
        JUST_UNDER(1),
        /** Noise hides the machine: noise in %. */
        NOISE(1),
        /** One side gets less: left less right, % of the mean. */
        ONE_SIDE(1),
        /** First level, height and tyres. */
        LEVEL_FIRST(0),
        /** First the shaft speed. */
        PTO_FIRST(0),
        /** First outlets and vanes. */
        OUTLETS_FIRST(0),
        /** No shape is significant. */
        NO_SHAPE(0),
        /** Too much at the tramline: amplitude in %. */
        CENTRE_HEAVY(1),
        /** Too much half-way to the next tramline: amplitude in %. */
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
        /** The tests contradict the owner's direction of the lever. */
        DIRECTION(0),
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

    static AdviceReason of(Kind kind, double... numbers) {
        return new AdviceReason(kind, DoubleStream.of(numbers).boxed().toList(), "");
    }

    static AdviceReason about(Kind kind, String lever) {
        return new AdviceReason(kind, List.of(), lever);
    }
}
