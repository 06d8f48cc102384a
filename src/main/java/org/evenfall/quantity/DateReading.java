package org.evenfall.quantity;

import java.time.LocalDate;

/** The result of reading a typed text as a date. */
public sealed interface DateReading {

    /** Nothing but blanks. */
    record Empty() implements DateReading {}

    /**
     * A date without ambiguity.
     *
     * @param date the date
     */
    record Value(LocalDate date) implements DateReading {}

    /**
     * Two numbers with a slash that can each be the day, such as {@code 3/4/27}: the person must be asked.
     *
     * @param dayFirst the first number as the day
     * @param monthFirst the first number as the month
     */
    record Ambiguous(LocalDate dayFirst, LocalDate monthFirst) implements DateReading {}

    /** No date, or a day that its month does not have. */
    record NotADate() implements DateReading {}
}
