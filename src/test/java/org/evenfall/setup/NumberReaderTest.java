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
     * are whole numbers are shown without decimals, the value with one.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            nullValues = "-",
            value = {
                "28 m; 28; -",
                "12 m; 12; -",
                "11.9 m; 11.9; WARNING START entry.unusual at /start/tramlineWidth field.tramlineWidth 11.9m~1 12m~0 48m~0",
                "48.1 m; 48.1; WARNING START entry.unusual at /start/tramlineWidth field.tramlineWidth 48.1m~1 12m~0 48m~0",
                "9 m; 9; WARNING START entry.unusual at /start/tramlineWidth field.tramlineWidth 9m~1 12m~0 48m~0",
                "8.9 m; -; STOP START entry.impossible at /start/tramlineWidth field.tramlineWidth 8.9m~1 9m~0 60m~0",
                "60 m; 60; WARNING START entry.unusual at /start/tramlineWidth field.tramlineWidth 60m~1 12m~0 48m~0",
                "60.1 m; -; STOP START entry.impossible at /start/tramlineWidth field.tramlineWidth 60.1m~1 9m~0 60m~0",
                "160 ft; 48.768; WARNING START entry.unusual at /start/tramlineWidth field.tramlineWidth 160ft~1 39.3701ft~1 157.4803ft~1",
                "200 ft; -; STOP START entry.impossible at /start/tramlineWidth field.tramlineWidth 200ft~1 29.5276ft~1 196.8504ft~1",
                "60.04 m; -; STOP START entry.impossible at /start/tramlineWidth field.tramlineWidth 60.04m~2 9m~0 60m~0"
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

    /** Disc radius 0.15 to 0.8 m: the limit must not be shown as 0.2 m; in cm 15 to 80. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "0.14 m; 0.14m~2 0.15m~2 0.8m~1",
                "0.149 m; 0.149m~3 0.15m~2 0.8m~1",
                "0.9 m; 0.9m~1 0.15m~2 0.8m~1",
                "14 cm; 14cm~1 15cm~0 80cm~0",
                "14.96 cm; 14.96cm~2 15cm~0 80cm~0",
                "4 in; 4in~1 5.9055in~1 31.4961in~1"
            })
    void aSmallLimitIsNotRoundedAway(String typed, String args) {
        assertThat(read(MachinePaths.DISC_RADIUS, typed)).isNull();
        reports("STOP START entry.impossible at /machine/discRadius field.discRadius " + args);
    }

    /** Area 0.01 to 20 000 ha: not 0.0 to 20000.0; a volume of 0.1 to 50 L has one decimal, its usual limits too. */
    @Test
    void lowAndHighLimitsHaveTheirOwnDecimals() {
        assertThat(read(RatePaths.AREA, "0.001 ha")).isNull();
        reports("STOP RATE entry.impossible at /rate/plan/area field.area 0.001ha~3 0.01ha~2 20000ha~1");
    }

    @Test
    void usualLimitsOfAFewMetresHaveADecimal() {
        // crop growth, usually 0 to 0.3 m; possible to 1 m
        assertThat(read(HeightPaths.GROWTH, "0.4 m")).isEqualTo(0.4);
        reports("WARNING HEIGHT entry.unusual at /height/growth field.growth 0.4m~1 0m~1 0.3m~1");
    }

    @Test
    void aCountHasNoDecimals() {
        assertThat(read(MachinePaths.OUTLETS, "5")).isNull();
        reports("STOP START entry.impossible at /machine/outlets field.outlets 5~1 1~0 4~0");
    }

    @ParameterizedTest
    @CsvSource({"28 m, 28", "92 ft, 28.0416", "' 28 m', 28", "28, 28"})
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
                "wide; entry.notANumber at /start/tramlineWidth 'wide' field.tramlineWidth",
                "28 kg; entry.wrongUnit at /start/tramlineWidth 'kg' field.tramlineWidth 'm'",
                "1,250 m; entry.ambiguous at /start/tramlineWidth '1,250' 1.25~4 1250~0"
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
            value = {"1,250 kg; 1.25~4 1250~0", "1,000 kg; 1~4 1000~0"})
    void whatCanBeThousandsIsAskedBack(String typed, String both) {
        assertThat(read(RatePaths.HOPPER_USED, typed)).isNull();
        reports("STOP RATE entry.ambiguous at /rate/hopperUsed '" + typed.replace(" kg", "") + "' " + both);
    }

    @Test
    void onlyThousandsAreAskedBackToo() {
        assertThat(read(RatePaths.PRODUCT_RATE, "1,250 kg/ha")).isNull();
        reports("STOP RATE entry.ambiguous at /rate/plan/productRate '1,250' 1.25~4 1250~0");
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
        reports("STOP TRAYS entry.notANumber at /trays/tests/0/catches/3 'x' field.catchMass");
        assertThat(sum("5 + g")).isNull();
    }
}
