package org.evenfall.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.evenfall.sheet.Sheets.boxes;
import static org.evenfall.sheet.Sheets.field;
import static org.evenfall.sheet.Sheets.yard;

import java.util.List;
import org.evenfall.machine.RateSetting;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnitSystem;
import org.evenfall.sheet.SheetContent.Box;
import org.evenfall.sheet.SheetContent.Entries;
import org.evenfall.sheet.SheetContent.Part;
import org.junit.jupiter.api.Test;

/** The boxes: label, unit, what is known already, what can be skipped. */
class SheetBoxesTest {

    @Test
    void whatIsMeasuredIsBlankAndWhatIsKnownIsPrinted() throws Exception {
        Part yard = yard(Sheets.setup("setup"));
        assertThat(boxes(yard, "1f"))
                .extracting(Box::label, Box::unit, Box::value)
                .containsExactly(
                        tuple("Volume of the container", "L", "2"),
                        tuple("Weight of the empty container", "g", "212"),
                        tuple("Weight, filled 1", "g", ""),
                        tuple("Weight, filled 2", "g", ""),
                        tuple("Weight, filled 3", "g", ""));
        assertThat(boxes(yard, "1g")).extracting(Box::value).contains("2.00", "3.15", "4.50");
        assertThat(boxes(yard, "1g")).hasSize(3 + 4 + 4 + 1);
        assertThat(boxes(yard, "3b")).hasSize(4 * 3);
        assertThat(boxes(yard, "4a")).extracting(Box::value).containsOnly("");
    }

    @Test
    void whatCanBeSkippedIsGrey() {
        Part yard = yard(Setup.EMPTY);
        assertThat(boxes(yard, "1e")).allMatch(Box::skippable);
        assertThat(boxes(yard, "1g")).allMatch(Box::skippable);
        assertThat(boxes(yard, "4c")).allMatch(Box::skippable);
        assertThat(boxes(yard, "1f")).noneMatch(Box::skippable);
        assertThat(boxes(yard, "3b")).noneMatch(Box::skippable);
        assertThat(boxes(yard, "3c").stream().filter(Box::skippable))
                .extracting(Box::label)
                .containsExactly("Tilt", "Tyre left", "Tyre right");
        assertThat(boxes(field(Setup.EMPTY), "6c")).noneMatch(Box::skippable);
    }

    @Test
    void theBucketHasItsTargetAndBand() throws Exception {
        Entries bucket = field(Sheets.setup("setup")).blocks().stream()
                .filter(Entries.class::isInstance)
                .map(Entries.class::cast)
                .filter(entries -> entries.heading().promptId().equals("5e"))
                .findFirst()
                .orElseThrow();
        assertThat(bucket.heading().notes().get(0).replace('\u00a0', ' '))
                .isEqualTo("One outlet in 20 s: 16.2 kg · Good is: 15.4 to 17.0 kg, without the bucket.");
        assertThat(bucket.rows()).hasSize(3);
    }

    /** What a test is driven under, as the page asks it: what is set, with what is set now next to its box; then the day. */
    @Test
    void theConditionsOfATestHaveBoxesAndWhatIsSetNow() throws Exception {
        List<Box> three = boxes(field(Sheets.setup("setup")), "6b");
        assertThat(three).hasSize(3 * 12).allMatch(box -> box.value().isEmpty());
        assertThat(three.subList(0, 12))
                .extracting(Box::label, box -> box.set().replace('\u00a0', ' '))
                .containsExactly(
                        tuple("long vane", "10.5"),
                        tuple("drop point", "5"),
                        tuple("PTO speed", "540 rpm"),
                        tuple("Opening left", "27.5"),
                        tuple("Opening right", "27.5"),
                        tuple("Height over the tray rim", "75 cm"),
                        tuple("Forward speed", "12.0 km/h"),
                        tuple("Wind speed", ""),
                        tuple("Runs driven", "3"),
                        tuple("Date", ""),
                        tuple("Strip of the field", ""),
                        tuple("Middle pass driven towards", ""));
        assertThat(three.subList(12, 24))
                .extracting(box -> box.set().replace('\u00a0', ' '))
                .containsExactly("", "", "540 rpm", "", "", "75 cm", "12.0 km/h", "", "3", "", "", "");
    }

    /** A terminal has one factor, and shows a weight. */
    @Test
    void aFactorTakesThePlaceOfTheOpenings() {
        Setup setup = Setup.EMPTY.withMachine(Setup.EMPTY.machine().withRateSetting(RateSetting.FACTOR));
        assertThat(boxes(field(setup), "5e"))
                .extracting(Box::label)
                .startsWith("Factor", "Time", "Bucket empty", "Weight the terminal shows, all outlets", "Left 1");
        assertThat(boxes(field(setup), "6b")).extracting(Box::label).doesNotContain("Opening right");
    }

    @Test
    void unitsFollowTheUnitsOfTheFarm() {
        Setup acre = Setup.EMPTY.withStart(Setup.EMPTY.start().withUnits(UnitSystem.ACRE));
        assertThat(boxes(field(acre), "5d")).extracting(Box::unit).contains("ft");
        assertThat(boxes(yard(acre), "4a")).extracting(Box::unit).containsOnly("in");
    }
}
