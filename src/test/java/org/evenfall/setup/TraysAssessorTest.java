package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.TypedSetup.lines;

import java.util.List;
import java.util.Map;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.Widening;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.FieldCv;
import org.evenfall.trays.MachineOrder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Step 6 as a whole: verdict, comparison and loss, for five trays on 24 m. */
class TraysAssessorTest {

    private static final RateResult NO_RATE = new RateResult(null, null, List.of(), null);

    static final MachineOrder IN_ORDER = new MachineOrder(true, true, true);

    static final MachineProfile MACHINE = TypedSetup.machine(
            0.75,
            new Lever("long vane", "°", 10, 40, 0.5, Widening.HIGHER),
            new Lever("drop point", "", 0, 10, 0.25, Widening.LOWER));

    static TypedSetup ground() {
        return TypedSetup.blank().type(StartPaths.TRAMLINE_WIDTH, "24 m").type(TrayPaths.TRAY_COUNT, "5");
    }

    static TypedSetup caught(TypedSetup typed, int test, String... grams) {
        return typed.type(TrayPaths.TEST_CATCHES, TrayPaths.TESTS.item(test), grams);
    }

    static TypedSetup set(TypedSetup typed, int test, String longVane, String dropPoint) {
        EntryPath<SettingsEntries> at =
                TrayPaths.TESTS.item(test).then("settings", TrayTestEntry::settings, TrayTestEntry::withSettings);
        return new TypedSetup(at.set(
                typed.setup(),
                SettingsEntries.EMPTY.withLevers(Map.of(
                        "long vane", EnteredQuantity.parse(longVane),
                        "drop point", EnteredQuantity.parse(dropPoint)))));
    }

    static Assessed<TraysResult> assess(TypedSetup typed, ProductResult product, MachineOrder order) {
        return TraysAssessor.assess(
                typed.read(), MACHINE, product, NO_RATE, TestResults.now(typed, MACHINE, product), order, false);
    }

    private static Assessed<TraysResult> assess(TypedSetup typed) {
        return assess(typed, TypedSetup.product(0.75, 46.0), IN_ORDER);
    }

    static Advice advice(TypedSetup typed, MachineOrder order) {
        return assess(typed, TypedSetup.product(0.75, 46.0), order).present().advice();
    }

    /** Which catches have which verdict was computed once. */
    @ParameterizedTest
    @CsvSource({
        "103 97 103 97 100, NOTE, evenGood",
        "115 100 85 100 115, NOTE, even",
        "115 85 115 85 100, NOTE, probablyEven",
        "120 80 120 80 100, WARNING, notEvenEnough",
        "126 74 126 74 100, STOP, doNotSpread"
    })
    void theVerdictIsThatOfTheLastTest(String catches, String severity, String key) {
        TypedSetup typed = caught(ground(), 0, "100", "100", "100", "100", "101");
        typed = caught(typed, 2, catches.split(" "));
        Assessed<TraysResult> assessed = assess(typed);
        FieldCv field = assessed.present().lastEvenness().field();
        assertThat(assessed.findings())
                .filteredOn(finding -> finding.source().equals("source.cvLimits"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.kind()).hasToString(severity);
                    assertThat(finding.key()).isEqualTo("trays." + key);
                    assertThat(finding.field()).isEqualTo("/trays/tests/2");
                    assertThat(finding.args())
                            .containsExactly(
                                    Arg.number(field.medianPercent(), 0, Unit.PERCENT),
                                    Arg.number(field.lowPercent(), 0, Unit.PERCENT),
                                    Arg.number(field.highPercent(), 0, Unit.PERCENT),
                                    Arg.number(field.statedChancePercent(), 0, Unit.PERCENT));
                });
        assertThat(assessed.present().tests()).extracting(TrayTestResult::index).containsExactly(0, 2);
        // 20 kg/ha of grain at 20 %, by the square of the field CV
        double share = field.medianPercent() / 20;
        assertThat(assessed.present().loss().lowKgPerHa()).isEqualTo(20 * share * share, within(1e-6));
    }

    @Test
    void withoutAWidthThereIsNoLayout() {
        Assessed<TraysResult> assessed = assess(TypedSetup.blank().type(TrayPaths.WIND, "2.1 m/s"));
        assertThat(lines(assessed.findings()))
                .containsExactly(
                        "NOTE TRAYS trays.windNote at /trays/wind 2.1m/s~1", "MISSING TRAYS missing.widthFirst at ");
        assertThat(assessed.present().layout()).isNull();
        assertThat(assessed.present().advice()).isNull();
    }

    @Test
    void withoutATestOneIsMissing() {
        Assessed<TraysResult> assessed = assess(ground());
        assertThat(lines(assessed.findings())).containsExactly("MISSING TRAYS missing.trayTest at /trays/tests");
        TraysResult trays = assessed.present();
        assertThat(trays.layout().positionsM()).containsExactly(-12.0, -6.0, 0.0, 6.0, 12.0);
        assertThat(trays.loss()).isNull();
        assertThat(trays.plan()).isNull();
        assertThat(trays.line()).isNull();
        assertThat(trays.advice().kind()).isEqualTo(AdviceKind.DO_A_TEST);
    }

    @Test
    void atWidthMoreTraysAreProposedAndSevenStayAllowed() {
        TypedSetup wide = TypedSetup.blank().type(StartPaths.TRAMLINE_WIDTH, "32 m");
        assertThat(assess(wide).present().layout().positionsM()).hasSize(11);
        assertThat(lines(assess(wide).findings())).noneMatch(line -> line.contains("sevenAtWidth"));
        TypedSetup seven = wide.type(TrayPaths.TRAY_COUNT, "7");
        assertThat(assess(seven).present().layout().positionsM()).hasSize(7);
        assertThat(lines(assess(seven).findings()))
                .contains("NOTE TRAYS trays.sevenAtWidth at /trays/trayCount 7~0 5.3333m~1 11~0" + "");
    }

    @Test
    void thePlacesOfEachTestAreKept() {
        TypedSetup typed = TypedSetup.blank().type(StartPaths.TRAMLINE_WIDTH, "28 m");
        typed = caught(typed, 1, "10", "11", "10", "9", "10");
        typed = typed.type(TrayPaths.TEST_POSITIONS, TrayPaths.TESTS.item(2), "-14", "-6", "1", "6", "14");
        assertThat(assess(typed).present().placesM())
                .containsExactly(List.of(), List.of(-14.0, -7.0, 0.0, 7.0, 14.0), List.of(-14.0, -6.0, 1.0, 6.0, 14.0));
    }

    @Test
    void theMachineCheckComesFirst() {
        List<Finding> findings = TraysAssessor.assess(
                        ground().read(),
                        MACHINE,
                        TypedSetup.product(0.75, 46.0),
                        NO_RATE,
                        TestResults.now(ground(), MACHINE, TypedSetup.product(0.75, 46.0)),
                        IN_ORDER,
                        true)
                .findings();
        assertThat(lines(findings))
                .containsExactly(
                        "STOP TRAYS trays.yardFirst at /yard", "MISSING TRAYS missing.trayTest at /trays/tests");
    }

    /** 200 kg/ha on 0.25 m²: 5 g a run; granules of 0.0267004 g (the usual), √(0.0267004 / 5) = 7.3076 %, three runs. */
    @Test
    void theCatchPlanFollowsFromTheRate() {
        TypedSetup typed =
                ground().choose(RatePaths.BASIS, RateBasis.PRODUCT).type(RatePaths.PRODUCT_RATE, "200 kg/ha");
        typed = caught(typed, 0, "10", "11", "10", "9", "10").type(TrayPaths.TEST_RUNS, TrayPaths.TESTS.item(0), "2");
        ProductResult product = TypedSetup.product(0.75, 46.0);
        RateResult rate = RateAssessor.assess(typed.read(), MACHINE, product).present();
        Assessed<TraysResult> assessed = TraysAssessor.assess(
                typed.read(), MACHINE, product, rate, TestResults.now(typed, MACHINE, product), IN_ORDER, false);
        assertThat(assessed.present().plan().catchPerRunG()).isEqualTo(5, within(1e-9));
        assertThat(assessed.present().plan().runsNeeded()).isEqualTo(3);
        // urea of 46 %: 92 kg/ha of nitrogen a run; three passes of 24 m over 100 m, three times, are 2.16 ha
        assertThat(assessed.present().strip().nitrogenPerRunKgPerHa()).isEqualTo(92, within(1e-9));
        assertThat(assessed.present().strip().nitrogenKgPerHa()).isEqualTo(276, within(1e-9));
        assertThat(assessed.present().strip().productUsedKg()).isEqualTo(432, within(1e-9));
        assertThat(lines(assessed.findings()))
                .contains("NOTE TRAYS trays.stripNitrogen at /trays 92kg/ha~0 3~0 276kg/ha~0 432kg~0 100m~0")
                .anyMatch(line -> line.startsWith("NOTE TRAYS trays.largerTrays at /trays "));
        assertThat(lines(assessed.findings())).contains("NOTE TRAYS trays.fewRuns at /trays/tests/0/runs 2~0 3~0");
    }

    @Test
    void whatWasTypedOfATestIsKept() {
        EntryPath<TrayTestEntry> at = TrayPaths.TESTS.item(1);
        TypedSetup typed = set(caught(ground(), 1, "100", "90", "110", "90", "110"), 1, "27", "11")
                .type(TrayPaths.TEST_OPENING_LEFT, at, "25,5")
                .type(TrayPaths.TEST_OPENING_RIGHT, at, "27")
                .type(TrayPaths.TEST_WIND, at, "4.1 m/s");
        typed = new TypedSetup(TrayPaths.TEST_DATE.at(at).set(typed.setup(), "2028-03-30"));
        Assessed<TraysResult> assessed = assess(typed);
        TrayTestResult test = assessed.present().last();
        assertThat(test.index()).isEqualTo(1);
        assertThat(test.date()).isEqualTo("2028-03-30");
        assertThat(test.openingLeft()).isEqualTo(25.5);
        assertThat(test.openingRight()).isEqualTo(27);
        assertThat(test.windMPerS()).isEqualTo(4.1, within(1e-9));
        assertThat(test.settings().levers()).containsExactly(Map.entry("long vane", 27.0));
        assertThat(lines(assessed.findings()))
                .contains(
                        "STOP TRAYS settings.leverBeyond at /trays/tests/1/settings/levers/drop point"
                                + " 'drop point' '11' 0~0 10~0",
                        "MISSING TRAYS trays.differs.WIND at /trays/tests/1/wind 2~0 4.1m/s~1 4m/s~1");
        assertThat(assessed.present().advice().kind()).isEqualTo(AdviceKind.WAIT_FOR_WIND);
        assertThat(advice(typed.type(TrayPaths.WIND_STOP, "5 m/s"), IN_ORDER).kind())
                .isNotEqualTo(AdviceKind.WAIT_FOR_WIND);
    }

    @Test
    void testsAreComparedAndTheLineIsAssessed() {
        TypedSetup typed = set(caught(ground(), 0, "110", "90", "110", "90", "100"), 0, "27", "4");
        typed = set(caught(typed, 1, "100", "90", "110", "90", "110"), 1, "28", "4");
        for (int i = 0; i < 3; i++) {
            typed = typed.type(TrayPaths.LINE_POSITION, TrayPaths.LINE.item(i), (24 * i - 24) + " m")
                    .type(TrayPaths.LINE_AMOUNT, TrayPaths.LINE.item(i), i == 1 ? "20 g" : "0 g");
        }
        Assessed<TraysResult> assessed = assess(typed);
        assertThat(assessed.present().comparisons()).hasSize(1);
        assertThat(assessed.present().line().amountsG()).containsExactly(0.0, 20.0, 0.0);
        assertThat(lines(assessed.findings()))
                .contains(
                        "NOTE TRAYS trays.against at /trays/tests/1 2~0 1~0 50%~0",
                        "NOTE TRAYS trays.line.count at /trays/line 3~0 9~0 99~0");
    }
}
