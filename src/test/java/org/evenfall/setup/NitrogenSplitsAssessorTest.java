package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import java.util.stream.Stream;
import org.evenfall.rate.NitrogenSplits;
import org.evenfall.rate.PlanInput;
import org.evenfall.rate.Plans;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.UnitsBasis;
import org.evenfall.setup.path.RatePaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The season's nitrogen as it is typed: sum, this pass, what is reported. */
class NitrogenSplitsAssessorTest {

    /** 200 kg/ha of product with half as many percent. */
    private static RatePlan planned(double nitrogenKgPerHa) {
        return Plans.of(new PlanInput(
                new PlanInput.Rate(200, nitrogenKgPerHa / 2),
                new PlanInput.Field(null, null, null),
                new PlanInput.Containers(null, null, null),
                null,
                new PlanInput.Outlets(2, null),
                5,
                new PlanInput.Prices(null, null, null, 100)));
    }

    private static Assessed<NitrogenSplits> assess(Entered entered, RatePlan plan) {
        return NitrogenSplitsAssessor.assess(entered.read(), plan);
    }

    private static Entered typed(String... passes) {
        return Entered.inEmpty().withAll(RatePaths.NITROGEN_SPLITS, passes);
    }

    @Test
    void aBlankListIsNothing() {
        assertThat(assess(Entered.inEmpty(), planned(80)).result()).isNull();
        assertThat(assess(typed("", ""), planned(80)).result()).isNull();
        assertThat(assess(typed("", ""), planned(80)).findings()).isEmpty();
    }

    @Test
    void sumAndThisPass() {
        Assessed<NitrogenSplits> assessed = assess(typed("50 kg/ha", "80", "", "40 kg/ha"), planned(80));
        assertThat(assessed.present().totalKgPerHa()).isCloseTo(170, within(1e-9));
        assertThat(assessed.present().thisPassNumbers()).containsExactly(2);
        assertThat(assessed.findings()).isEmpty();
        assertThat(assess(typed("50 kg/ha"), null).findings()).isEmpty();
    }

    /** 1 lb/ac is 1.120 851 kg/ha (exact, NIST SP 811): 100 are 112.085. */
    @Test
    void poundsPerAcreCountToo() {
        assertThat(assess(typed("100 lb/ac", "30 kg/ha"), null).present().totalKgPerHa())
                .isCloseTo(142.085, within(1e-3));
    }

    /** A unit is 1 kg/ha or 1.255 35 kg/ha: asked, never guessed. */
    @Test
    void unitsNeedTheirBasis() {
        Entered units = typed("40 units", "30 kg/ha");
        assertThat(assess(units, planned(80)).result()).isNull();
        assertThat(lines(assess(units, planned(80)).findings()))
                .containsExactly("STOP RATE rate.unitsBasis /rate/plan/unitsBasis []");
        assertThat(assess(units.with(RatePaths.UNITS_BASIS, UnitsBasis.KG_PER_HA), null)
                        .present()
                        .totalKgPerHa())
                .isCloseTo(70, within(1e-9));
        assertThat(assess(units.with(RatePaths.UNITS_BASIS, UnitsBasis.HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE), null)
                        .present()
                        .totalKgPerHa())
                .isCloseTo(40 * 1.25535 + 30, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"78.9, true", "79, false", "81, false", "81.2, true"})
    void aRateThatIsNotListedIsReported(double plannedKgPerHa, boolean reported) {
        List<String> findings = lines(
                assess(typed("50 kg/ha", "80 kg/ha"), planned(plannedKgPerHa)).findings());
        assertThat(findings)
                .hasSize(reported ? 1 : 0)
                .allSatisfy(line ->
                        assertThat(line).startsWith("NOTE RATE rate.splitNotListed /rate/plan/nitrogenSplits ["));
    }

    /** Ordinary is 20 to 300 kg/ha, the smallest usual pass to two of the largest. */
    @ParameterizedTest
    @CsvSource({"19.9, true", "20, false", "20.1, false", "299.9, false", "300, false", "300.1, true"})
    void aSumOutsideTheOrdinaryIsReported(String kgPerHa, boolean reported) {
        List<String> findings = lines(assess(typed(kgPerHa + " kg/ha"), null).findings());
        assertThat(findings)
                .isEqualTo(
                        reported
                                ? List.of("NOTE RATE rate.splitsUnusual /rate/plan/nitrogenSplits [" + kgPerHa
                                        + ":0 kg/ha, 20:0, 300:0 kg/ha]")
                                : List.of());
    }

    @ParameterizedTest
    @CsvSource({"5, false", "6, false", "7, true"})
    void moreThanSixPassesAreReported(int count, boolean reported) {
        String[] passes = Stream.generate(() -> "30 kg/ha").limit(count).toArray(String[]::new);
        assertThat(lines(assess(typed(passes), null).findings()))
                .isEqualTo(
                        reported
                                ? List.of("NOTE RATE rate.splitsMany /rate/plan/nitrogenSplits [7:0, 6:0]")
                                : List.of());
    }

    /** What is refused, or is unusual for one pass, is reported at its own place. */
    @Test
    void eachPassHasTheLimitsOfARate() {
        ReadSetup read = typed("4 kg/ha", "160 kg/ha", "abc").read();
        assertThat(read.findings())
                .extracting(finding -> finding.key() + " " + finding.field())
                .contains(
                        "entry.impossible /rate/plan/nitrogenSplits/0",
                        "entry.unusual /rate/plan/nitrogenSplits/1",
                        "entry.notANumber /rate/plan/nitrogenSplits/2");
        assertThat(NitrogenSplitsAssessor.assess(read, null).present().totalKgPerHa())
                .isCloseTo(160, within(1e-9));
    }
}
