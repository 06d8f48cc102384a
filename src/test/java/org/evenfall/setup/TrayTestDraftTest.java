package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.evenfall.finding.FindingKind;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.UnknownKeys;
import org.evenfall.setup.entry.WheelEntries;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.store.SetupJson;
import org.evenfall.trays.AdviceReason;
import org.evenfall.trays.LeverMove;
import org.junit.jupiter.api.Test;

/** What a new tray test begins with, from the demo of an invented farm. */
class TrayTestDraftTest {

    private static final NumberWriter POINT = (value, decimals) -> NumberFormats.decimals(value, decimals, Locale.ROOT);
    private static final NumberWriter COMMA =
            (value, decimals) -> NumberFormats.decimals(value, decimals, Locale.GERMANY);

    private static Setup demo() throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    /** The demo after its first test, which is uneven. */
    private static Setup uneven() throws Exception {
        return demo().withTrays(demo().trays().withTests(demo().trays().tests().subList(0, 1)));
    }

    private static TrayTestEntry last(Setup setup) {
        List<TrayTestEntry> tests = setup.trays().tests();
        return tests.get(tests.size() - 1);
    }

    @Test
    void itBeginsWithTheAdvisedLeverAndKeepsTheRest() throws Exception {
        Setup setup = uneven();
        Assessment assessment = Assessor.assess(setup);
        LeverMove move = assessment.trays().advice().moves().get(0);
        Setup next = TrayTestDraft.added(setup, assessment, COMMA);
        TrayTestEntry before = setup.trays().tests().get(0);
        TrayTestEntry draft = last(next);
        assertThat(draft.settings().levers().get(move.lever()).text())
                .isEqualTo(COMMA.write(move.to(), move.to() == Math.rint(move.to()) ? 0 : 1))
                .isNotEqualTo(before.settings().levers().get(move.lever()).text());
        assertThat(draft.settings().levers().get("drop point"))
                .isEqualTo(before.settings().levers().get("drop point"));
        assertThat(draft.settings().ptoSpeed()).isEqualTo(before.settings().ptoSpeed());
        assertThat(draft.catches()).isEmpty();
        assertThat(next.trays().tests().get(0)).isEqualTo(before);
        // what is filled in can be read again
        assertThat(Assessor.assess(next).findings())
                .noneMatch(finding ->
                        finding.kind() == FindingKind.STOP && finding.field().startsWith("/trays/tests/1"));
    }

    @Test
    void openingsComeFromTheLastBucketTestEachSideItsOwn() throws Exception {
        Setup setup = demo();
        List<BucketEntry> buckets = setup.rate().bucketTests();
        BucketEntry lastBucket =
                buckets.get(buckets.size() - 1).withOpeningRight(new EnteredQuantity("28.25", Unit.NONE));
        Setup sides = setup.withRate(setup.rate().withBucketTests(List.of(buckets.get(0), lastBucket)));
        TrayTestEntry draft = last(TrayTestDraft.added(sides, Assessor.assess(sides), COMMA));
        assertThat(draft.openingLeft()).isEqualTo(new EnteredQuantity("27,5", Unit.NONE));
        assertThat(draft.openingRight()).isEqualTo(new EnteredQuantity("28,25", Unit.NONE));
    }

    /** The factor once; the test has it on both sides. */
    @Test
    void aFactorIsWrittenOnce() throws Exception {
        Setup demo = demo();
        Setup factor = demo.withMachine(
                demo.machine().withRateSetting(RateSetting.FACTOR).withFactorRule(FactorRule.SHOWN_OVER_CAUGHT));
        TrayTestEntry draft = last(TrayTestDraft.added(factor, Assessor.assess(factor), COMMA));
        assertThat(draft.openingLeft()).isEqualTo(new EnteredQuantity("27,5", Unit.NONE));
        assertThat(draft.openingRight()).isEqualTo(EnteredQuantity.EMPTY);
        TrayTestEntry once = last(demo).withOpeningRight(EnteredQuantity.EMPTY);
        Setup typedOnce = factor.withTrays(factor.trays().withTests(List.of(once)));
        assertThat(Assessor.assess(typedOnce).trays().last().openingRight()).isEqualTo(27.5);
    }

    /** What is set on that day: width and driving as typed, speed as measured, rate, density and size as computed. */
    @Test
    void itCarriesItsConditions() throws Exception {
        Setup demo = demo();
        TestConditionEntries drawn =
                last(TrayTestDraft.added(demo, Assessor.assess(demo), COMMA)).conditions();
        assertThat(drawn)
                .isEqualTo(new TestConditionEntries(
                        EnteredQuantity.parse("28 m"),
                        DrivingPattern.BACK_AND_FORTH,
                        EnteredQuantity.parse("75 cm"),
                        EnteredQuantity.parse("12,0 km/h"),
                        EnteredQuantity.parse("173,9 kg/ha"),
                        "Granular urea, treated",
                        "S-1042",
                        EnteredQuantity.parse("0,7572 kg/L"),
                        EnteredQuantity.parse("3,1010 mm"),
                        "",
                        "",
                        YesNo.UNANSWERED,
                        UnknownKeys.NONE));
    }

    /** Two more runs into the trays of the first test: seven plus signs wait for numbers, a blank tray stays blank. */
    @Test
    void moreRunsWaitForTheirCatches() throws Exception {
        Setup demo = demo();
        TrayTestEntry first = demo.trays().tests().get(0);
        List<EnteredQuantity> caught = new ArrayList<>(first.catches());
        caught.set(2, EnteredQuantity.EMPTY);
        List<TrayTestEntry> tests = new ArrayList<>(demo.trays().tests());
        tests.set(0, first.withCatches(caught).withRuns(EnteredQuantity.parse("3")));
        Setup spilt = demo.withTrays(demo.trays().withTests(tests));
        Setup more = TrayTestDraft.withMoreRuns(spilt, 0, 2, Assessor.assess(spilt));
        TrayTestEntry after = more.trays().tests().get(0);
        assertThat(after.runs()).isEqualTo(EnteredQuantity.parse("5"));
        assertThat(after.catches().get(0).text())
                .isEqualTo(first.catches().get(0).text() + "+");
        assertThat(after.catches().get(2)).isEqualTo(EnteredQuantity.EMPTY);
        assertThat(more.trays().tests().get(1)).isEqualTo(demo.trays().tests().get(1));
        assertThat(Assessor.assess(more).findings())
                .filteredOn(finding -> finding.key().equals("entry.sumOpen"))
                .hasSize(6)
                .allMatch(finding -> finding.kind() == FindingKind.MISSING);
    }

    /** A test that does not say how often it was driven counts as driven once. */
    @Test
    void aTestWithoutRunsWasDrivenOnce() throws Exception {
        Setup demo = demo();
        List<TrayTestEntry> tests = List.of(last(demo).withRuns(EnteredQuantity.EMPTY));
        Setup setup = demo.withTrays(demo.trays().withTests(tests));
        assertThat(last(TrayTestDraft.withMoreRuns(setup, 0, 1, Assessor.assess(setup)))
                        .runs())
                .isEqualTo(EnteredQuantity.parse("2"));
    }

    /** Blank conditions stay blank where nothing is known. */
    @Test
    void withoutAnythingKnownTheConditionsAreBlank() {
        TrayTestEntry draft = last(TrayTestDraft.added(Setup.EMPTY, Assessor.assess(Setup.EMPTY), POINT));
        assertThat(draft).isEqualTo(TrayTestEntry.EMPTY);
    }

    @Test
    void dateAndWindComeFromTheCardAndTheTrays() throws Exception {
        Setup setup = demo().withCard(demo().card().withDate("2027-03-19"))
                .withTrays(demo().trays().withWind(new EnteredQuantity("2,1", Unit.M_PER_S)));
        TrayTestEntry draft = last(TrayTestDraft.added(setup, Assessor.assess(setup), POINT));
        assertThat(draft.date()).isEqualTo("2027-03-19");
        assertThat(draft.wind()).isEqualTo(new EnteredQuantity("2,1", Unit.M_PER_S));
    }

    @Test
    void theFirstTestBeginsWithTheSettingsOfTheMatchAndTheRunsOfThePlan() throws Exception {
        Setup blank = demo().withTrays(TrayEntries.EMPTY);
        Assessment assessment = Assessor.assess(blank);
        TrayTestEntry draft = last(TrayTestDraft.added(blank, assessment, POINT));
        assertThat(draft.settings()).isEqualTo(blank.match().settings());
        assertThat(draft.runs().text())
                .isEqualTo(Integer.toString(assessment.trays().plan().runsNeeded()));
        assertThat(draft.positions())
                .extracting(EnteredQuantity::text)
                .containsExactly("-14.00", "-9.50", "-5.00", "-2.50", "0.00", "2.50", "5.00", "9.50", "14.00");
        assertThat(draft.positions()).extracting(EnteredQuantity::unit).containsOnly(Unit.M);
    }

    /** An older test has no positions; the next one carries those of the layout, and the two are at the same places. */
    @Test
    void aTestAfterAnOlderOneCarriesItsPositions() throws Exception {
        Setup demo = demo();
        Setup setup = demo.withTrays(demo.trays()
                .withTests(demo.trays().tests().stream()
                        .map(test -> test.withPositions(List.of()))
                        .toList()));
        Setup next = TrayTestDraft.added(setup, Assessor.assess(setup), POINT);
        assertThat(last(next).positions())
                .extracting(EnteredQuantity::text)
                .containsExactly("-14.00", "-9.33", "-4.67", "0.00", "4.67", "9.33", "14.00");
        Setup repeated = next.withTrays(next.trays()
                .withTests(List.of(
                        setup.trays().tests().get(0),
                        last(setup),
                        last(next)
                                .withCatches(last(setup).catches())
                                .withSettings(last(setup).settings()))));
        TraysResult trays = Assessor.assess(repeated).trays();
        assertThat(trays.comparisons().get(1).change().scatterPercent()).isEqualTo(0);
        assertThat(trays.placesM()).hasSize(3);
        assertThat(trays.placesM().get(2)).containsExactly(-14.0, -9.33, -4.67, 0.0, 4.67, 9.33, 14.0);
        assertThat(trays.advice().reasons()).anyMatch(reason -> reason.kind() == AdviceReason.Kind.POOLED);
    }

    @Test
    void traysMovedOutOfAWheelMarkKeepTheirTruePositions() throws Exception {
        Setup moved = demo().withTrays(TrayEntries.EMPTY
                .withTrayCount(new EnteredQuantity("21", Unit.NONE))
                .withWheels(WheelEntries.EMPTY.withTrack(new EnteredQuantity("2.4", Unit.M))));
        Assessment assessment = Assessor.assess(moved);
        assertThat(assessment.trays().layout().moved()).isTrue();
        Setup next = TrayTestDraft.added(moved, assessment, COMMA);
        List<EnteredQuantity> positions = last(next).positions();
        assertThat(positions)
                .isEqualTo(TrayTestDraft.positions(assessment.trays().layout().positionsM(), COMMA));
        assertThat(positions.get(0)).isEqualTo(new EnteredQuantity("-14,00", Unit.M));
        // the next test has those of the layout by then; what was driven keeps its own
        Setup after = TrayTestDraft.added(next, Assessor.assess(demo()), POINT);
        assertThat(last(after).positions()).hasSize(7);
        assertThat(after.trays().tests().get(0).positions()).isEqualTo(positions);
    }

    @Test
    void withoutAPlanOrABucketTestTheDraftIsBlank() {
        Setup draft = TrayTestDraft.added(Setup.EMPTY, Assessor.assess(Setup.EMPTY), POINT);
        assertThat(draft.trays().tests()).containsExactly(TrayTestEntry.EMPTY);
    }
}
