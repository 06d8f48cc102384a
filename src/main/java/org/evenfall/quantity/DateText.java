package org.evenfall.quantity;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads a date as people write it. Independent of the locale, since the same file is read on many machines. Years are 2000
 * to 2099; two digits mean one of them.
 */
public final class DateText {

    private static final int FIRST_YEAR = 2000;

    private static final Pattern YEAR_FIRST = Pattern.compile("(20\\d\\d)([-/.])(\\d\\d?)\\2(\\d\\d?)");
    private static final Pattern DAY_FIRST =
            Pattern.compile("(\\d\\d?)(?:\\. *(\\d\\d?)\\. *(\\d\\d|20\\d\\d)|-(\\d\\d?)-(20\\d\\d))");
    private static final Pattern SLASHES = Pattern.compile("(\\d\\d?)/(\\d\\d?)/(\\d\\d|20\\d\\d)");
    private static final Pattern DAY_NAME =
            Pattern.compile("(\\d\\d?)\\.?[ -]?(\\p{L}{3,9})\\.?,?[ -]?(\\d\\d|20\\d\\d)");
    private static final Pattern NAME_DAY = Pattern.compile("(\\p{L}{3,9})\\.? ?(\\d\\d?),? (\\d\\d|20\\d\\d)");

    private DateText() {}

    /**
     * Reads a typed text. Edge cases:
     *
     * <ul>
     *   <li>blank: {@link DateReading.Empty};
     *   <li>{@code 2027-12-31}, {@code 31.12.2027}, {@code 31-12-2027}, {@code 1.3.27}, {@code 18 Mar 2027}: a value;
     *   <li>{@code 31/12/2027}, {@code 12/31/2027}, {@code 4/4/2027}: a value, since only one reading is possible;
     *   <li>{@code 3/4/2027}: {@link DateReading.Ambiguous};
     *   <li>{@code 31.2.2027} and anything else: {@link DateReading.NotADate}.
     * </ul>
     */
    public static DateReading read(String typed) {
        String text = typed.replace('\u00a0', ' ').strip().replaceAll(" +", " ");
        if (text.isEmpty()) {
            return new DateReading.Empty();
        }
        Matcher slashes = SLASHES.matcher(text);
        if (slashes.matches()) {
            return withSlashes(number(slashes, 1), number(slashes, 2), slashes.group(3));
        }
        LocalDate date = unambiguous(text);
        return date == null ? new DateReading.NotADate() : new DateReading.Value(date);
    }

    /** The date of a text in the form of ISO 8601 (2027-12-31), the one in which dates are printed; else the text as it is. */
    public static String iso(String typed) {
        return read(typed) instanceof DateReading.Value value ? value.date().toString() : typed.strip();
    }

    private static DateReading withSlashes(int first, int second, String year) {
        LocalDate dayFirst = date(year, second, first);
        LocalDate monthFirst = date(year, first, second);
        if (dayFirst != null && monthFirst != null && !dayFirst.equals(monthFirst)) {
            return new DateReading.Ambiguous(dayFirst, monthFirst);
        }
        LocalDate only = dayFirst == null ? monthFirst : dayFirst;
        return only == null ? new DateReading.NotADate() : new DateReading.Value(only);
    }

    private static @Nullable LocalDate unambiguous(String text) {
        Matcher year = YEAR_FIRST.matcher(text);
        if (year.matches()) {
            return date(year.group(1), number(year, 3), number(year, 4));
        }
        Matcher day = DAY_FIRST.matcher(text);
        if (day.matches()) {
            boolean dots = day.group(2) != null;
            return date(day.group(dots ? 3 : 5), number(day, dots ? 2 : 4), number(day, 1));
        }
        Matcher dayName = DAY_NAME.matcher(text);
        if (dayName.matches()) {
            return date(dayName.group(3), month(dayName.group(2)), number(dayName, 1));
        }
        Matcher nameDay = NAME_DAY.matcher(text);
        return nameDay.matches() ? date(nameDay.group(3), month(nameDay.group(1)), number(nameDay, 2)) : null;
    }

    /** Number of an English month, in full or at least its first three letters; 0 for another word. */
    private static int month(String word) {
        String begin = word.toLowerCase(Locale.ROOT);
        Optional<Month> month = Arrays.stream(Month.values())
                .filter(one -> one.getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                        .toLowerCase(Locale.ROOT)
                        .startsWith(begin))
                .findFirst();
        return month.map(Month::getValue).orElse(0);
    }

    private static @Nullable LocalDate date(String year, int month, int day) {
        int number = Integer.parseInt(year);
        try {
            return LocalDate.of(number < FIRST_YEAR ? FIRST_YEAR + number : number, month, day);
        } catch (DateTimeException noSuchDay) {
            return null;
        }
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }
}
