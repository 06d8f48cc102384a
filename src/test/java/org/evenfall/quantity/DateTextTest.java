package org.evenfall.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dates as people write them, read into the form of ISO 8601. */
class DateTextTest {

    private static final int DATES = 3000;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2027-12-31|2027-12-31",
                "2027-3-1|2027-03-01",
                "2027/12/31|2027-12-31",
                "2027.12.31|2027-12-31",
                "31.12.2027|2027-12-31",
                "31. 12. 2027|2027-12-31",
                "1.3.27|2027-03-01",
                "01.03.27|2027-03-01",
                "3.4.2027|2027-04-03",
                "31-12-2027|2027-12-31",
                "3-4-2027|2027-04-03",
                "31/12/2027|2027-12-31",
                "31/12/27|2027-12-31",
                "12/31/2027|2027-12-31",
                "4/4/27|2027-04-04",
                "18 Mar 2027|2027-03-18",
                "18 mar 27|2027-03-18",
                "18 March 2027|2027-03-18",
                "18. March 2027|2027-03-18",
                "18-Mar-2027|2027-03-18",
                "18 Sept. 2027|2027-09-18",
                "March 18, 2027|2027-03-18",
                "' 18  May  2027 '|2027-05-18",
                "29.2.2028|2028-02-29",
                "1.1.00|2000-01-01",
                "31.12.99|2099-12-31"
            })
    void read(String typed, LocalDate date) {
        assertThat(DateText.read(typed)).isEqualTo(new DateReading.Value(date));
        assertThat(DateText.iso(typed)).isEqualTo(date.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "31.2.2027",
                "29.2.2027",
                "0.3.2027",
                "1.0.2027",
                "32.1.2027",
                "1.13.2027",
                "31/2/2027",
                "2/30/2027",
                "13/13/2027",
                "2027-02-30",
                "2027-13-01",
                "2027-31-12",
                "31.12.1999",
                "31.12.2100",
                "1999-12-31",
                "31.12",
                "12/2027",
                "2027",
                "31122027",
                "31.12.",
                "31.12.2027.",
                "31.12/2027",
                "1.3.027",
                "27-03-01",
                "1-3-27",
                "18 Mrz 2027",
                "18 Ma 2027",
                "18 Marches 2027",
                "Mar 2027",
                "tomorrow",
                "31.12.2027 x",
                "-1.3.2027"
            })
    void noDate(String typed) {
        assertThat(DateText.read(typed)).isEqualTo(new DateReading.NotADate());
        assertThat(DateText.iso(typed)).isEqualTo(typed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "\u00a0"})
    void blank(String typed) {
        assertThat(DateText.read(typed)).isEqualTo(new DateReading.Empty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"3/4/27", "3/4/2027", "03/04/2027", " 3/4/2027 "})
    void slashesCanBeReadTwoWays(String typed) {
        assertThat(DateText.read(typed))
                .isEqualTo(new DateReading.Ambiguous(LocalDate.of(2027, 4, 3), LocalDate.of(2027, 3, 4)));
        assertThat(DateText.iso(typed)).isEqualTo(typed.strip());
    }

    /** What is written in a form without slashes is read back as the same date. */
    @Test
    void formattedThenRead() {
        List<DateTimeFormatter> forms = Stream.of(
                        "uuuu-MM-dd",
                        "d.M.uuuu",
                        "dd.MM.uu",
                        "d-M-uuuu",
                        "d MMM uuuu",
                        "d MMMM uuuu",
                        "MMMM d, uuuu",
                        "uuuu/M/d")
                .map(form -> DateTimeFormatter.ofPattern(form, Locale.ENGLISH))
                .toList();
        Random random = new Random(1842);
        for (int i = 0; i < DATES; i++) {
            LocalDate date = any(random);
            for (DateTimeFormatter form : forms) {
                String text = form.format(date);
                assertThat(DateText.read(text)).as(text).isEqualTo(new DateReading.Value(date));
            }
        }
    }

    /** With slashes a day up to 12 is asked back unless day and month are the same; above 12 it is read either way. */
    @Test
    void aDayUpToTwelveWithSlashesIsAskedBack() {
        Random random = new Random(77);
        for (int i = 0; i < DATES; i++) {
            LocalDate date = any(random);
            int day = date.getDayOfMonth();
            int month = date.getMonthValue();
            DateReading dayFirst = DateText.read(day + "/" + month + "/" + date.getYear());
            DateReading monthFirst =
                    DateText.read(String.format(Locale.ROOT, "%d/%d/%02d", month, day, date.getYear() % 100));
            if (day > 12 || day == month) {
                assertThat(dayFirst).isEqualTo(new DateReading.Value(date));
                assertThat(monthFirst).isEqualTo(new DateReading.Value(date));
            } else {
                LocalDate swapped = LocalDate.of(date.getYear(), day, month);
                assertThat(dayFirst).isEqualTo(new DateReading.Ambiguous(date, swapped));
                assertThat(monthFirst).isEqualTo(new DateReading.Ambiguous(swapped, date));
            }
        }
    }

    private static LocalDate any(Random random) {
        return LocalDate.of(2000, 1, 1).plusDays(random.nextInt(36525));
    }
}
