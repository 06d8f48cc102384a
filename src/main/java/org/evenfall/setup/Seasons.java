package org.evenfall.setup;

import java.time.LocalDate;
import java.time.Month;
import java.util.regex.Pattern;
import org.evenfall.setup.entry.Setup;

/** The season that a day belongs to. */
public final class Seasons {

    /** Assumption: from this month on, product is bought and machines are prepared for the next spring. */
    private static final Month FIRST_OF_NEXT = Month.OCTOBER;

    /** First year that a season may be given as; as with dates, an earlier one is a slip. */
    public static final int FIRST = 2000;

    /** Last year that a season may be given as. */
    public static final int LAST = 2100;

    private static final Pattern YEAR = Pattern.compile("\\d{4}");

    private Seasons() {}

    /** The season that a setup names; another where it names none. */
    public static int of(Setup setup, int otherwise) {
        String season = setup.start().season().strip();
        return YEAR.matcher(season).matches() ? Integer.parseInt(season) : otherwise;
    }

    /** The year of the season: that of the day, from October on the next. */
    public static int of(LocalDate day) {
        return day.getMonth().compareTo(FIRST_OF_NEXT) < 0 ? day.getYear() : day.getYear() + 1;
    }
}
