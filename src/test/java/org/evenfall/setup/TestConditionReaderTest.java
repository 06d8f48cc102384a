package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Tramlines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a test states counts, all else as now; every value differs between the test and now. */
class TestConditionReaderTest {

    private static final EntryPath<TrayTestEntry> TEST = TrayPaths.TESTS.item(0);

    private static final MachineSet NOW = new MachineSet(
            new TestConditions(
                    new Tramlines(28, DrivingPattern.ROUND_AND_ROUND),
                    0.75,
                    12.0,
                    170.0,
                    "urea",
                    "B",
                    0.75,
                    3.1,
                    false),
            new ReadSettings(Map.of("vane", 9.0), 540.0, 0.75, 1.0),
            new Openings(25.0, 26.0));

    private static final ReadSettings STATED = new ReadSettings(Map.of("vane", 7.0), 530.0, 0.7, 2.0);

    private static final ReadSettings NONE = new ReadSettings(Map.of(), null, null, null);

    private static TrayTestEntry full() {
        return TrayTestEntry.EMPTY
                .withOpeningLeft(EnteredQuantity.parse("20"))
                .withOpeningRight(EnteredQuantity.parse("21"))
                .withWind(EnteredQuantity.parse("1.5 m/s"))
                .withConditions(new TestConditionEntries(
                        EnteredQuantity.parse("24 m"),
                        DrivingPattern.BACK_AND_FORTH,
                        EnteredQuantity.parse("80 cm"),
                        EnteredQuantity.parse("10 km/h"),
                        EnteredQuantity.parse("150 kg/ha"),
                        "prills",
                        "A",
                        EnteredQuantity.parse("0.74 kg/L"),
                        EnteredQuantity.parse("2.2 mm"),
                        "",
                        "",
                        YesNo.YES,
                        TestConditionEntries.EMPTY.unknownKeys()));
    }

    private static TestConditionReader.Conditions read(TrayTestEntry test, ReadSettings stated) {
        Setup setup = TEST.set(Setup.EMPTY, test);
        setup = setup.withTrays(setup.trays().withWind(EnteredQuantity.parse("3 m/s")));
        return TestConditionReader.of(ReadingPass.read(setup), TEST, stated, NOW);
    }

    @Test
    void whatIsStatedCounts() {
        TestConditionReader.Conditions read = read(full(), STATED);
        assertThat(read.assumed()).isEmpty();
        assertThat(read.windMPerS()).isEqualTo(1.5);
        assertThat(read.set())
                .isEqualTo(new MachineSet(
                        new TestConditions(
                                new Tramlines(24, DrivingPattern.BACK_AND_FORTH),
                                0.8,
                                10.0,
                                150.0,
                                "prills",
                                "A",
                                0.74,
                                2.2,
                                true),
                        STATED,
                        new Openings(20.0, 21.0)));
    }

    /** Density and size have no present value: those of another delivery would prove nothing. */
    @Test
    void allElseCountsAsNow() {
        TestConditionReader.Conditions read = read(TrayTestEntry.EMPTY, NONE);
        assertThat(read.windMPerS()).isEqualTo(3);
        assertThat(read.set())
                .isEqualTo(new MachineSet(
                        new TestConditions(
                                new Tramlines(28, DrivingPattern.ROUND_AND_ROUND),
                                0.75,
                                12.0,
                                170.0,
                                "urea",
                                "B",
                                null,
                                null,
                                false),
                        NOW.settings(),
                        NOW.openings()));
        assertThat(read.assumed())
                .containsExactly(
                        "field.tramlineWidth",
                        "start.driving",
                        "test.heightOverRim",
                        "field.speed",
                        "field.productRate",
                        "test.product",
                        "test.delivery",
                        "field.ptoSpeed",
                        "field.leverValue",
                        "rate.openingLeft",
                        "field.wind");
    }

    /** Each condition by itself. */
    @ParameterizedTest
    @CsvSource({
        "0, field.tramlineWidth",
        "1, start.driving",
        "2, ''",
        "3, field.speed",
        "4, field.productRate",
        "5, test.product",
        "6, test.delivery",
        "7, ''",
        "8, ''"
    })
    void oneThatIsNotStatedIsListed(int which, String key) {
        TestConditionEntries all = full().conditions();
        TestConditionEntries open = switch (which) {
            case 0 -> all.withTramlineWidth(EnteredQuantity.EMPTY);
            case 1 -> all.withDrivingPattern(DrivingPattern.UNANSWERED);
            case 2 -> all.withHeightOverRim(EnteredQuantity.EMPTY);
            case 3 -> all.withSpeed(EnteredQuantity.EMPTY);
            case 4 -> all.withProductRate(EnteredQuantity.EMPTY);
            case 5 -> all.withProduct("");
            case 6 -> all.withDelivery(" ");
            case 7 -> all.withBulkDensity(EnteredQuantity.EMPTY);
            default -> all.withMedianSize(EnteredQuantity.EMPTY);
        };
        assertThat(read(full().withConditions(open), STATED).assumed())
                .isEqualTo(key.isEmpty() ? List.of() : List.of(key));
    }

    /** An older test states a height over the crop only, which then counts for the height over the rim. */
    @Test
    void theHeightOfAnOlderTest() {
        TrayTestEntry old = full().withConditions(full().conditions().withHeightOverRim(EnteredQuantity.EMPTY));
        assertThat(read(old, STATED).set().conditions().heightOverRimM()).isEqualTo(0.7);
        assertThat(read(old, NONE).set().conditions().heightOverRimM()).isEqualTo(0.75);
    }

    /** An opening of one side counts for both; what is typed but cannot be read has a finding of its own. */
    @Test
    void oneOpeningCountsForBoth() {
        TrayTestEntry left = full().withOpeningRight(EnteredQuantity.EMPTY);
        assertThat(read(left, STATED).set().openings()).isEqualTo(new Openings(20.0, 20.0));
        TrayTestEntry wrong = full().withConditions(full().conditions().withSpeed(EnteredQuantity.parse("fast")));
        assertThat(read(wrong, STATED).assumed()).isEmpty();
        assertThat(read(wrong, STATED).set().conditions().speedKmPerH()).isEqualTo(12);
        assertThat(read(full().withWind(EnteredQuantity.EMPTY), STATED).assumed())
                .containsExactly("field.wind");
    }

    /** Nothing is known now: nothing is assumed. */
    @Test
    void whatIsNotKnownNowIsNotAssumed() {
        MachineSet nothing = new MachineSet(TestResults.conditions(28), NONE, new Openings(null, null));
        Setup setup = TEST.set(Setup.EMPTY, TrayTestEntry.EMPTY);
        TestConditionReader.Conditions read = TestConditionReader.of(ReadingPass.read(setup), TEST, NONE, nothing);
        assertThat(read.assumed()).containsExactly("field.tramlineWidth", "start.driving");
        assertThat(read.windMPerS()).isNull();
        assertThat(read.set()).isEqualTo(nothing);
    }
}
