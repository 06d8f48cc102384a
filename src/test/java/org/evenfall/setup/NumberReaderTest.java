package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.TrayPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One typed quantity: its value in the core unit, or why it cannot be used, with limits a person can act on. */
class NumberReaderTest {

    private final List<Finding> findings = new ArrayList<>();

    private Double read(Quantity<?> entry, String typed) {
        EnteredQuantity quantity = EnteredQuantity.parse(typed);
        return new NumberReader(findings::add).read(quantity, entry.range(Setup.EMPTY, quantity), entry.path());
    }

    private void reports(String line) {
        assertThat(TypedSetup.lines(findings)).isEqualTo(line == null ? List.of() : List.of(line));
    }

    /**
     * Tramlines 9 to 60 m, usual 12 to 48; 1 ft = 0.3048 m, so 29.5276 to 196.8504 ft and 39.3701 to 157.4803 ft. Limits that
     * are rounded inwards without needless decimals; the value is quoted as typed.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            nullValues = "-",
            value = {
                "28 m; 28; -",
                "12 m; 12; -",
                "11.9 m; 11.9; WARNING START entry.unusual at /start/tramlineWidth field.tramlineWidth '11.9 m' 12~0 48m~0",
                "48.1 m; 48.1; WARNING START entry.unusual at /start/tramlineWidth field.tramlineWidth '48.1 m' 12~0 48m~0",
                "9 m; 9; WARNING START entry.unusual at /start/tramlineWidth field.tramlineWidth '9 m' 12~0 48m~0",
                "8.9 m; -; STOP START entry.impossible at /start/tramlineWidth field.tramlineWidth '8.9 m' 9~0 60m~0",
                "60 m; 60; WARNING START entry.unusual at /start/tramlineWidth field.tramlineWidth '60 m' 12~0 48m~0",
                "60.1 m; -; STOP START entry.impossible at /start/tramlineWidth field.tramlineWidth '60.1 m' 9~0 60m~0",
                "160 ft; 48.768; WARNING START entry.unusual at /start/tramlineWidth field.tramlineWidth '160 ft' 40~0 157ft~0",
                "200 ft; -; STOP START entry.impossible at /start/tramlineWidth field.tramlineWidth '200 ft' 30~0 196ft~0",
                "60.04 m; -; STOP START entry.impossible at /start/tramlineWidth field.tramlineWidth '60.04 m' 9~0 60m~0"
            })
    void limitsInTheTypedUnit(String typed, Double metres, String line) {
        Double read = read(StartPaths.TRAMLINE_WIDTH, typed);
        if (metres == null) {
            assertThat(read).isNull();
        } else {
            assertThat(read).isEqualTo(metres, within(1e-9));
        }
        reports(line);
    }

    /** Disc diameter 0.3 to 1.6 m: the limit must not be shown as 0 or 2 m; in cm 30 to 160. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "0.29 m; 0.3~1 1.6m~1",
                "0.299 m; 0.3~1 1.6m~1",
                "1,70 m; 0.3~1 1.6m~1",
                "29 cm; 30~0 160cm~0",
                "29.96 cm; 30~0 160cm~0",
                "11 in; 12~0 62in~0"
            })
    void aSmallLimitIsNotRoundedAway(String typed, String args) {
        assertThat(read(MachinePaths.DISC_DIAMETER, typed)).isNull();
        reports("STOP START entry.impossible at /machine/discDiameter field.discDiameter '" + typed + "' " + args);
    }

    /** Area 0.01 to 20 000 ha: not 0.0 to 20000.0; a volume of 0.1 to 50 L has one decimal, its usual limits too. */
    @Test
    void lowAndHighLimitsHaveTheirOwnDecimals() {
        assertThat(read(RatePaths.AREA, "0.001 ha")).isNull();
        reports("STOP RATE entry.impossible at /rate/plan/area field.area '0.001 ha' 0.01~2 20000ha~0");
    }

    @Test
    void usualLimitsOfAFewMetresHaveADecimal() {
        // crop growth, usually 0 to 0.3 m; possible to 1 m
        assertThat(read(HeightPaths.GROWTH, "0.4 m")).isEqualTo(0.4);
        reports("WARNING HEIGHT entry.unusual at /height/growth field.growth '0.4 m' 0~0 0.3m~1");
    }

    @Test
    void aCountHasNoDecimals() {
        assertThat(read(MachinePaths.OUTLETS, "5")).isNull();
        reports("STOP START entry.impossible at /machine/outlets field.outlets '5' 1~0 4~0");
    }

    @Test
    void aCountIsShownByAWholeExampleAndTakesNoUnit() {
        assertThat(read(TrayPaths.TRAY_COUNT, "seven")).isNull();
        reports("STOP TRAYS entry.notANumber at /trays/trayCount 'seven' field.trayCount 13~0");
        findings.clear();
        assertThat(read(TrayPaths.TRAY_COUNT, "7 trays")).isNull();
        reports("STOP TRAYS entry.noUnit at /trays/trayCount 'trays' field.trayCount");
    }

    @ParameterizedTest
    @CsvSource({"28 m, 28", "28m, 28", "92 ft, 28.0416", "92ft, 28.0416", "' 28 m', 28", "28, 28"})
    void theUnitMayBeTypedBehindTheNumber(String text, double metres) {
        EnteredQuantity typed = new EnteredQuantity(text, org.evenfall.quantity.Unit.NONE);
        assertThat(new NumberReader(findings::add)
                        .read(
                                typed,
                                StartPaths.TRAMLINE_WIDTH.range(Setup.EMPTY, typed),
                                StartPaths.TRAMLINE_WIDTH.path()))
                .isEqualTo(metres, within(1e-9));
        reports(null);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "wide; entry.notANumber at /start/tramlineWidth 'wide' field.tramlineWidth 12.5~1",
                "28 kg; entry.wrongUnit at /start/tramlineWidth 'kg' field.tramlineWidth ['m','ft']",
                "36 yd; entry.wrongUnit at /start/tramlineWidth 'yd' field.tramlineWidth ['m','ft']",
                "36yards; entry.wrongUnit at /start/tramlineWidth 'yards' field.tramlineWidth ['m','ft']",
                "1,250 m; entry.ambiguous at /start/tramlineWidth '1,250' 1.25~2 1250~0"
            })
    void whatCannotBeUsedStops(String typed, String line) {
        assertThat(read(StartPaths.TRAMLINE_WIDTH, typed)).isNull();
        reports("STOP START " + line);
    }

    /** A thousand times as much is impossible, so the text is no thousands group. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"1.099; 1.099", "1,099; 1.099", "22,063; 22.063", "59.999; 59.999", "-9.333; -9.333"})
    void threeDecimalsAreReadWhereThousandsAreImpossible(String typed, double value) {
        assertThat(read(TrayPaths.SWITCH_ON, typed)).isEqualTo(value);
        reports(null);
    }

    /** Places and catches of a tray test with three decimals: a thousand times as much is outside the field, or no catch. */
    @Test
    void placesAndCatchesWithThreeDecimalsAreRead() {
        EntryPath<TrayTestEntry> test = TrayPaths.TESTS.item(0);
        ReadSetup read = TypedSetup.blank()
                .type(TrayPaths.TEST_POSITIONS, test, "-14 m", "-9.333 m", "-4,667 m", "4.667", "30.617 ft")
                .type(TrayPaths.TEST_CATCHES, test, "12.934 g", "4,512 g", "1.000 g", "0.998", "1.234+2.345 g")
                .read();
        assertThat(read.numbers(TrayPaths.TEST_POSITIONS.at(test)))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-4 ? 0 : 1)
                .containsExactly(-14.0, -9.333, -4.667, 4.667, 9.33206);
        assertThat(read.numbers(TrayPaths.TEST_CATCHES.at(test)))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1)
                .containsExactly(12.934, 4.512, 1.0, 0.998, 3.579);
        assertThat(read.findings()).noneMatch(finding -> finding.field().startsWith("/trays/tests"));
    }

    /** Both are possible, or only the thousands are: the person is asked. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"1,250 kg; 1.25~2 1250~0", "1,000 kg; 1~1 1000~0"})
    void whatCanBeThousandsIsAskedBack(String typed, String both) {
        assertThat(read(RatePaths.HOPPER_USED, typed)).isNull();
        reports("STOP RATE entry.ambiguous at /rate/hopperUsed '" + typed.replace(" kg", "") + "' " + both);
    }

    @Test
    void onlyThousandsAreAskedBackToo() {
        assertThat(read(RatePaths.PRODUCT_RATE, "1,250 kg/ha")).isNull();
        reports("STOP RATE entry.ambiguous at /rate/plan/productRate '1,250' 1.25~2 1250~0");
    }

    @Test
    void aBlankIsNotReported() {
        assertThat(read(StartPaths.TRAMLINE_WIDTH, "")).isNull();
        assertThat(read(StartPaths.TRAMLINE_WIDTH, "  ")).isNull();
        reports(null);
    }

    private Double sum(String typed) {
        Setup grams = TrayPaths.CATCH_KIND.path().set(Setup.EMPTY, AmountKind.MASS);
        EntryPath<EnteredQuantity> path = QuantityList.item(TrayPaths.TEST_CATCHES.at(TrayPaths.TESTS.item(0)), 3);
        EnteredQuantity quantity = EnteredQuantity.parse(typed);
        return new NumberReader(findings::add).sum(quantity, TrayPaths.TEST_CATCHES.range(grams, quantity), path);
    }

    @Test
    void amountsWithAPlusAreAddedInTheirUnit() {
        assertThat(sum("1,5 + 2.25+4 g")).isEqualTo(7.75);
        assertThat(sum("0.01+0.02 kg")).isEqualTo(30, within(1e-9));
        assertThat(sum("5")).isEqualTo(5);
        reports(null);
    }

    @Test
    void oneBadAmountSpoilsTheSum() {
        assertThat(sum("5 + x g")).isNull();
        reports("STOP TRAYS entry.notANumber at /trays/tests/0/catches/3 'x' field.catchMass 12.5~1");
        assertThat(sum("5 + g")).isNull();
    }
}
