package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import org.evenfall.finding.FindingKind;
import org.evenfall.rate.NitrogenSplits;
import org.evenfall.rate.PlanInput;
import org.evenfall.rate.Plans;
import org.evenfall.rate.RatePlan;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.LogPaths;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.StartPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The log of passes: 160 kg/ha of a product with 40 % are planned, in all 50 + 70 kg/ha of nitrogen. */
class SeasonLogAssessorTest {

    private static final RatePlan PLAN = Plans.of(new PlanInput(
            new PlanInput.Rate(160, 40),
            new PlanInput.Field(null, null, null),
            new PlanInput.Containers(null, null, null),
            null,
            new PlanInput.Outlets(2, null),
            5,
            new PlanInput.Prices(null, null, null, 100)));

    private static RateResult rate(RatePlan plan, NitrogenSplits splits) {
        return new RateResult(plan, null, splits, null, List.of(), List.of(), null);
    }

    private static Assessed<SeasonLogResult> assess(Setup setup) {
        return SeasonLogAssessor.assess(
                Entered.in(setup).read(),
                TypedSetup.product(0.75, 40.0),
                rate(PLAN, NitrogenSplits.of(List.of(50.0, 70.0), null)));
    }

    private static Assessed<SeasonLogResult> log(String... lines) {
        return assess(Logged.in(Setup.EMPTY, lines));
    }

    @Test
    void withoutALogThereIsNothing() {
        SeasonLogResult none = log().present();
        assertThat(none.passes()).isEmpty();
        assertThat(none.fields()).isEmpty();
        assertThat(none.total().passes()).isZero();
        assertThat(log(";;;").present()).as("a blank row is none").isEqualTo(none);
        assertThat(log().findings()).isEmpty();
    }

    /** 5 % of 160 kg/ha is 8: 1 680 kg and 1 520 kg on 10 ha are still within. */
    @ParameterizedTest
    @CsvSource({
        "1680, ",
        "1681, WARNING CARD log.use /log/passes/1/productDrawn [168.1:0 kg/ha; 5.0625:0 %]",
        "1520, ",
        "1519, WARNING CARD log.use /log/passes/1/productDrawn [151.9:0 kg/ha; -5.0625:0 %]"
    })
    void aPassFurtherThanFivePercentFromThePlanIsReported(String kg, String expected) {
        List<String> found = lines(log("1.3.2027; A; 5 ha; 800 kg", "2.3.2027; B; 10 ha; " + kg + " kg")
                .findings());
        assertThat(found.stream().map(line -> line.replace(", ", "; ")).toList())
                .isEqualTo(expected == null ? List.of() : List.of(expected));
    }

    /** Where another deviation is allowed for the rate, it counts here as at the hopper. */
    @Test
    void theToleranceThatWasTypedCounts() {
        Setup wide = RatePaths.TOLERANCE
                .path()
                .set(
                        Logged.in(Setup.EMPTY, ";A;10 ha;1740 kg"),
                        Entered.numbers("9 %").get(0));
        assertThat(assess(wide).findings()).isEmpty();
        Setup wider = Logged.in(wide, ";A;10 ha;1745 kg");
        assertThat(assess(wider).findings()).hasSize(1);
    }

    @Test
    void withoutAPlanNothingIsComparedWithIt() {
        SeasonLogResult result = SeasonLogAssessor.assess(
                        Entered.in(Logged.in(Setup.EMPTY, ";A;10 ha;9 t")).read(),
                        TypedSetup.product(0.75, null),
                        rate(null, null))
                .present();
        assertThat(result.passes().get(0).amounts().deviationPercent()).isNull();
        assertThat(result.fields().get(0).plan()).isNull();
        assertThat(result.fields().get(0).amounts().productKg()).isCloseTo(9000, within(1e-9));
        assertThat(result.total().nitrogenKg()).isNull();
    }

    /** 8 ha at 62.5 kg N/ha, then 6 ha at 66.67: 500 + 400 kg on 8 ha are 112.5 kg/ha, 7.5 less than the 120 planned. */
    @Test
    void aFieldAddsUpHoweverItIsWritten() {
        SeasonLogResult result = log(
                        "1.3.2027; Heron Corner; 8 ha; 1250 kg",
                        "2.3.2027; Long Reach; 3 ha; 480 kg",
                        "9.4.2027; heron  corner ; 6 ha; 1 t")
                .present();
        assertThat(result.fields())
                .extracting(SeasonLogResult.Field::field)
                .containsExactly("Heron Corner", "Long Reach");
        SeasonLogResult.Field heron = result.fields().get(0);
        assertThat(heron.amounts().passes()).isEqualTo(2);
        assertThat(heron.amounts().nitrogenKgPerHa()).isCloseTo(112.5, within(1e-9));
        assertThat(heron.plan().passes()).isEqualTo(2);
        assertThat(heron.plan().nitrogenKgPerHa()).isEqualTo(120);
        assertThat(heron.plan().leftKgPerHa()).isCloseTo(7.5, within(1e-9));
        assertThat(result.fields().get(1).plan().leftKgPerHa()).isCloseTo(120 - 64, within(1e-9));
        assertThat(result.total().spreadHa()).isCloseTo(17, within(1e-9));
        assertThat(result.total().productKg()).isCloseTo(2730, within(1e-9));
        assertThat(result.total().nitrogenKg()).isCloseTo(1092, within(1e-9));
        assertThat(result.passes())
                .extracting(SeasonLogResult.Pass::date)
                .containsExactly("2027-03-01", "2027-03-02", "2027-04-09");
    }

    /** 120 kg/ha and 5 % are 126: 3 150 kg of product on 10 ha are just that. */
    @ParameterizedTest
    @CsvSource({"1550, 0", "1551, 1"})
    void aFieldWithMoreThanTheSeasonIsReportedAtItsLastPass(String kg, int reports) {
        List<String> found = lines(log("; A; 10 ha; 1600 kg", "; B; 1 ha; 160 kg", "; a; 10 ha; " + kg + " kg", ";C;;")
                .findings());
        assertThat(found).hasSize(reports);
        if (reports > 0) {
            assertThat(found.get(0))
                    .startsWith("NOTE CARD log.seasonMore /log/passes/2/field [126.04:0 kg/ha, 120:0 kg/ha");
        }
    }

    @Test
    void anIncompletePassCountsNowhereAndABlankFieldIsThatOfTheSetup() {
        Setup setup = StartPaths.FIELD
                .path()
                .set(Logged.in(Setup.EMPTY, ";;10 ha;", ";;;1600 kg", "soon;;10 ac;1600 lb"), " Long Reach ");
        SeasonLogResult result = assess(setup).present();
        assertThat(result.incomplete()).isEqualTo(2);
        assertThat(result.passes().get(0).areaHa()).isEqualTo(10);
        assertThat(result.passes().get(0).amounts()).isNull();
        assertThat(result.passes().get(1).productKg()).isEqualTo(1600);
        assertThat(result.passes().get(2).date()).isEqualTo("soon");
        assertThat(result.total().passes()).isEqualTo(1);
        // NIST SP 811: 1 lb is 0.453 592 37 kg, 1 ac (international) 0.404 685 642 24 ha
        assertThat(result.total().productKg()).isCloseTo(725.747792, within(1e-6));
        assertThat(result.total().spreadHa()).isCloseTo(4.0468564224, within(1e-9));
        assertThat(result.fields()).extracting(SeasonLogResult.Field::field).containsExactly("Long Reach");
    }

    /** Whatever is logged, also what cannot be read, the card and the states of the steps stay as they are. */
    @ParameterizedTest
    @ValueSource(strings = {"1.3.2027;A;10 ha;9 t", "3/4/27;A;many;-5 kg", ";;;"})
    void noCardDependsOnTheLog(String line) {
        Setup demo = TypedSetup.demo().setup();
        Assessment before = Assessor.assess(demo);
        Assessment after = Assessor.assess(Logged.in(demo, line));
        assertThat(before.card().cardAllowed()).isTrue();
        assertThat(after.card()).isEqualTo(before.card());
        assertThat(after.states()).isEqualTo(before.states());
        assertThat(after.findingsForCard()).isEqualTo(before.findings());
    }

    @Test
    void whatCannotBeReadIsReportedAtItsPlace() {
        Assessment after = Assessor.assess(Logged.in(TypedSetup.demo().setup(), "3/4/27;A;many;5 kg"));
        assertThat(after.findings().stream()
                        .filter(finding -> finding.kind() == FindingKind.STOP)
                        .map(finding -> finding.field()))
                .containsExactlyInAnyOrder("/log/passes/0/date", "/log/passes/0/area");
        assertThat(LogPaths.holds("/log/passes/0/date")).isTrue();
        assertThat(LogPaths.holds("/logistics")).isFalse();
    }
}
