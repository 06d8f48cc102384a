package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.FilledSetup;
import org.evenfall.setup.path.Limits;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.Range;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.TrayPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every quantity of every entry, by walking the constants: it is read, in its core unit, within its limits. */
class ReadingPassTest {

    static Stream<FilledSetup.Place> measured() {
        return FilledSetup.measured().stream();
    }

    private static final Setup FILLED = FilledSetup.make();

    private static List<Finding> at(FilledSetup.Place place, ReadSetup read) {
        return read.findings().stream()
                .filter(finding -> finding.field().equals(place.path().pointer()))
                .filter(finding -> finding.kind() != FindingKind.MISSING)
                .toList();
    }

    private static ReadSetup typed(FilledSetup.Place place, String text, Unit unit) {
        return ReadingPass.read(place.path().set(FILLED, new EnteredQuantity(text, unit)));
    }

    @ParameterizedTest
    @MethodSource("measured")
    void whatIsNoNumberIsReportedAtItsOwnEntry(FilledSetup.Place place) {
        ReadSetup read = typed(place, "abc", Unit.NONE);
        assertThat(at(place, read)).singleElement().satisfies(finding -> {
            assertThat(finding.key()).isEqualTo("entry.notANumber");
            assertThat(finding.kind()).isEqualTo(FindingKind.STOP);
            assertThat(finding.step()).isEqualTo(place.path().step());
        });
        assertThat(read.number(place.path())).isNull();
    }

    @ParameterizedTest
    @MethodSource("measured")
    void everyUnitIsReadIntoTheCoreUnit(FilledSetup.Place place) {
        for (Unit unit : place.entry().units(FILLED)) {
            Range range = place.entry().range(FILLED, new EnteredQuantity("1", unit));
            double core = (range.usual().low() + 2 * range.usual().high()) / 3;
            String text = BigDecimal.valueOf(range.core().to(unit, core))
                    .setScale(9, RoundingMode.HALF_EVEN)
                    .toPlainString();
            ReadSetup read = typed(place, text, unit);
            assertThat(at(place, read)).as(text + " " + unit).isEmpty();
            assertThat(read.number(place.path())).as(text + " " + unit).isCloseTo(core, within(core));
        }
    }

    private static Offset<Double> within(double core) {
        return Offset.offset(1e-3 * Math.max(1e-3, Math.abs(core)));
    }

    @ParameterizedTest
    @MethodSource("measured")
    void limitsHoldAtAndFailBeyond(FilledSetup.Place place) {
        Range range = place.entry().range(FILLED);
        Limits possible = range.possible();
        Limits usual = range.usual();
        double step = 1e-4 * (possible.high() - possible.low());
        for (double limit : new double[] {possible.low(), possible.high()}) {
            double outside = limit == possible.low() ? limit - step : limit + step;
            assertThat(key(place, range, outside)).isEqualTo("entry.impossible");
            assertThat(key(place, range, limit)).isNotEqualTo("entry.impossible");
        }
        for (double limit : new double[] {usual.low(), usual.high()}) {
            double outside = limit == usual.low() ? limit - 1e-6 : limit + 1e-6;
            assertThat(key(place, range, limit)).isEmpty();
            if (possible.contain(outside)) {
                assertThat(key(place, range, outside)).isEqualTo("entry.unusual");
            }
        }
    }

    /** Key of what is reported for a value in the core unit; empty when nothing is. */
    private static String key(FilledSetup.Place place, Range range, double core) {
        // seven decimals: no text that could be a group of thousands
        String text =
                BigDecimal.valueOf(core).setScale(7, RoundingMode.HALF_EVEN).toPlainString();
        Unit unit = range.core();
        return at(place, typed(place, text, unit)).stream()
                .findFirst()
                .map(Finding::key)
                .orElse("");
    }

    @ParameterizedTest
    @EnumSource(AmountKind.class)
    void aCatchIsReadAsTheTraysAreRead(AmountKind kind) {
        Setup setup = TrayPaths.CATCH_KIND.path().set(FILLED, kind);
        Unit core = TrayPaths.TEST_CATCHES.range(setup).core();
        assertThat(core)
                .isEqualTo(
                        switch (kind) {
                            case VOLUME -> Unit.ML;
                            case HEIGHT -> Unit.MM;
                            case MASS, PERCENT, UNANSWERED -> Unit.G;
                        });
    }

    @ParameterizedTest
    @EnumSource(AmountKind.class)
    void aSieveClassIsReadAsTheSamplesAreRead(AmountKind kind) {
        Setup setup = ProductPaths.SIEVE_AMOUNTS.path().set(FILLED, kind);
        assertThat(ProductPaths.SIEVING_AMOUNTS.range(setup).core())
                .isEqualTo(
                        switch (kind) {
                            case MASS -> Unit.G;
                            case HEIGHT -> Unit.MM;
                            case PERCENT, VOLUME, UNANSWERED -> Unit.PERCENT;
                        });
    }

    @Test
    void theUnitTypedBehindTheNumberCounts() {
        assertThat(number("92 ft", Unit.M)).isCloseTo(28.0416, Offset.offset(1e-9));
        assertThat(number("28 m", Unit.FT)).isEqualTo(28);
    }

    private static Double number(String text, Unit unit) {
        var path = StartPaths.TRAMLINE_WIDTH.path();
        return ReadingPass.read(path.set(Setup.EMPTY, new EnteredQuantity(text, unit)))
                .number(path);
    }

    @Test
    void severalCatchesAreAdded() {
        var path = TrayPaths.LINE_AMOUNT.at(TrayPaths.LINE.item(1));
        ReadSetup read = ReadingPass.read(path.set(FILLED, new EnteredQuantity("1,5 + 2.25+4", Unit.G)));
        assertThat(read.number(path)).isEqualTo(7.75);
        ReadSetup wrong = ReadingPass.read(path.set(FILLED, new EnteredQuantity("1,5 + x", Unit.G)));
        assertThat(wrong.number(path)).isNull();
    }

    @Test
    void aDateIsReadOrReported() {
        ReadSetup read = ReadingPass.read(CardPaths.DATE.path().set(Setup.EMPTY, " 2027-04-30 "));
        assertThat(read.date(CardPaths.DATE)).isEqualTo("2027-04-30");
        ReadSetup wrong = ReadingPass.read(CardPaths.DATE.path().set(Setup.EMPTY, "2027-02-30"));
        assertThat(wrong.date(CardPaths.DATE)).isNull();
        assertThat(wrong.findings())
                .filteredOn(finding -> finding.key().equals("entry.notADate"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.field()).isEqualTo("/card/date"));
    }

    /** Day and month of a date with slashes can be swapped: both are named, and how each is typed. */
    @Test
    void anAmbiguousDateIsAskedBack() {
        ReadSetup read = ReadingPass.read(CardPaths.DATE.path().set(Setup.EMPTY, "3/4/27"));
        assertThat(read.date(CardPaths.DATE)).isNull();
        assertThat(TypedSetup.lines(read.findings()))
                .contains("STOP CARD entry.ambiguousDate at /card/date 2027-04-03 2027-03-04 '3.4.2027' '2027-03-04'");
        ReadSetup dotted = ReadingPass.read(CardPaths.DATE.path().set(Setup.EMPTY, "3.4.27"));
        assertThat(dotted.date(CardPaths.DATE)).isEqualTo("2027-04-03");
    }

    @Test
    void whatTheCardNeedsIsMissingUntilTyped() {
        assertThat(missing(Setup.EMPTY))
                .contains("/start/tramlineWidth", "/card/signedBy", "/product/form")
                .doesNotContain("/start/farm");
        Setup wide = StartPaths.TRAMLINE_WIDTH.path().set(Setup.EMPTY, EnteredQuantity.parse("28 m"));
        assertThat(missing(wide)).doesNotContain("/start/tramlineWidth").contains("/card/signedBy");
        assertThat(open(Setup.EMPTY)).contains("/start/farm", "/start/crop");
        Setup named = StartPaths.FARM.path().set(Setup.EMPTY, "Thornmarsh Farm");
        assertThat(open(named)).doesNotContain("/start/farm").contains("/start/crop");
    }

    /** What is asked for and not typed, but not needed for the card. */
    private static List<String> open(Setup setup) {
        return ReadingPass.read(setup).findings().stream()
                .filter(finding -> finding.kind() == FindingKind.NOTE)
                .map(Finding::field)
                .toList();
    }

    private static List<String> missing(Setup setup) {
        return ReadingPass.read(setup).findings().stream()
                .filter(finding -> finding.kind() == FindingKind.MISSING)
                .map(Finding::field)
                .toList();
    }

    @Test
    void anAmbiguousNumberIsAskedBack() {
        Setup setup = RatePaths.SPEED.path().set(Setup.EMPTY, new EnteredQuantity("1,250", Unit.KM_PER_H));
        assertThat(ReadingPass.read(setup).findings())
                .anySatisfy(finding -> assertThat(finding.key()).isEqualTo("entry.ambiguous"));
    }
}
