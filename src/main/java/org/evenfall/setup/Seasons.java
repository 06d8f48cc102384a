package org.evenfall.setup;

import java.time.LocalDate;
import java.time.Month;

/** The season that a day belongs to. */
public final class Seasons {

    /** Assumption: from this month on, product is bought and machines are prepared for the next spring. */
    private static final Month FIRST_OF_NEXT = Month.OCTOBER;

    private Seasons() {}

    /** The year of the season: that of the day, from October on the next. */
    public static int of(LocalDate day) {
        return day.getMonth().compareTo(FIRST_OF_NEXT) < 0 ? day.getYear() : day.getYear() + 1;
    }
}
