package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import org.evenfall.granule.BulkDensities;
import org.evenfall.granule.BulkDensity;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.Sieves;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.Widening;
import org.evenfall.reference.Candidate;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.ProductRanking;
import org.evenfall.reference.ProgressMonitor;
import org.evenfall.reference.RankContext;
import org.evenfall.reference.TestedProduct;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.StartPaths;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the closest tested product is asked with: machine, field, product and library. */
class MatchAssessorTest {

    private static final AssessOptions OPTIONS = new AssessOptions(5, 7, ProgressMonitor.NONE);
    private static final BulkDensity DENSITY = BulkDensities.of(List.of(1.5, 1.52, 1.48), 2, 0.001);
    private static final SieveResult SIEVE = Sieves.analyse(List.of(2.0, 4.0), List.of(List.of(7.0, 84.0, 9.0)));

    private static MachineProfile machine(@Nullable Double discRpm, @Nullable Double ptoHighest, Widening... levers) {
        return machine(List.of(24.0, 30.0, 27.0), discRpm, ptoHighest, levers);
    }

    private static MachineProfile machine(
            List<Double> widthsM, @Nullable Double discRpm, @Nullable Double ptoHighest, Widening... levers) {
        return new MachineProfile(
                "",
                widthsM,
                0.41,
                discRpm,
                480.0,
                ptoHighest,
                2,
                0.74,
                List.of(levers).stream()
                        .map(wider -> new Lever(wider.name(), "", 0, 10, 1, wider))
                        .toList(),
                List.of(),
                null);
    }

    private static final MachineProfile MACHINE = machine(900.0, 600.0, Widening.UNKNOWN, Widening.LOWER);

    private static ProductResult product(@Nullable BulkDensity density, @Nullable SieveResult sieve) {
        return new ProductResult(
                density, sieve, sieve == null ? null : sieve.distribution(), null, null, null, List.of(), null);
    }

    private static Entered field() {
        return Entered.inEmpty()
                .with(StartPaths.TRAMLINE_WIDTH, "28 m")
                .with(ProductPaths.FORM, ProductForm.GRANULAR_UREA);
    }

    private static Entered tested(Entered entered, int index, String id, String width, String density) {
        var at = MatchPaths.LIBRARY.item(index);
        return entered.with(MatchPaths.TESTED_ID, at, id)
                .with(MatchPaths.TESTED_NAME, at, "Product " + id)
                .with(MatchPaths.TESTED_WIDTH, at, width)
                .with(MatchPaths.TESTED_BULK_DENSITY, at, density);
    }

    private static Entered two() {
        return tested(tested(field(), 0, "a", "28 m", "0.98 kg/L"), 1, "b", "24 m", "0.76 kg/L");
    }

    private static final List<TestedProduct> TWO = List.of(
            new TestedProduct("a", "Product a", ProductForm.UNANSWERED, 28, 0.98, null),
            new TestedProduct("b", "Product b", ProductForm.UNANSWERED, 24, 0.76, null));

    private static Assessed<MatchResult> assess(Entered entered, MachineProfile machine, ProductResult product) {
        return MatchAssessor.assess(entered.read(), machine, product, OPTIONS);
    }

    private static MatchResult ranked(RankContext context, List<TestedProduct> library, @Nullable SieveResult sieve) {
        return ProductRanking.rank(
                new Candidate(
                        ProductForm.GRANULAR_UREA,
                        DENSITY.meanKgPerL(),
                        DENSITY.standardErrorKgPerL(),
                        sieve == null ? null : sieve.distribution()),
                library,
                context,
                5,
                7);
    }

    /** Disc 900 rpm at 540: at 600 rpm of the PTO 900 × 600 / 540 = 1000 rpm. Widest width of the handbook 30 m. */
    @Test
    void machineFieldAndProductEnterTheRanking() {
        MatchResult result = assess(two().with(MatchPaths.CHOSEN, "b"), MACHINE, product(DENSITY, SIEVE))
                .present();
        assertThat(result).isEqualTo(ranked(new RankContext(28, 0.41, 900, 1000, 0.74, "b", 30.0, true), TWO, SIEVE));
        assertThat(result.chosen().id()).isEqualTo("b");
        assertThat(result.redraws()).isEqualTo(7);
    }

    /**
     * Disc 1000 rpm at the highest PTO speed of 600, 900 at 540. The reach follows from the tested product where the
     * handbook names no width.
     */
    @Test
    void aFasterDiscAndALeverThatThrowsWiderReachFurther() {
        double slow = widestM(540.0, Widening.UNKNOWN, new RankContext(28, 0.41, 900, 900, 0.74, "b", null, false));
        double fast = widestM(600.0, Widening.UNKNOWN, new RankContext(28, 0.41, 900, 1000, 0.74, "b", null, false));
        double lever = widestM(540.0, Widening.HIGHER, new RankContext(28, 0.41, 900, 900, 0.74, "b", null, true));
        assertThat(fast).isGreaterThan(slow);
        assertThat(lever).isGreaterThan(slow);
    }

    /** With the second product of the library alone, tested at 24 m. */
    private static double widestM(double ptoHighest, Widening wider, RankContext context) {
        Entered entered = tested(field(), 0, "b", "24 m", "0.76 kg/L").with(MatchPaths.CHOSEN, "b");
        MatchResult result = assess(entered, machine(List.of(), 900.0, ptoHighest, wider), product(DENSITY, SIEVE))
                .present();
        assertThat(result).isEqualTo(ranked(context, List.of(TWO.get(1)), SIEVE));
        return result.widestReachableM();
    }

    /** Usual disc: 0.40 m, 850 rpm, which is also the highest where one of the two speeds is not known. */
    @Test
    void whatIsNotKnownOfTheMachineIsUsual() {
        MachineProfile unknown = MachineDefaultsTest.machine(null, null, null);
        assertThat(assess(field(), unknown, product(DENSITY, SIEVE)).present())
                .isEqualTo(ranked(new RankContext(28, 0.40, 850, 850, 0.75, "", null, false), List.of(), SIEVE));
        assertThat(assess(field(), machine(900.0, null), product(DENSITY, SIEVE))
                        .present())
                .isEqualTo(ranked(new RankContext(28, 0.41, 900, 900, 0.74, "", 30.0, false), List.of(), SIEVE));
        assertThat(assess(field(), machine(null, 600.0), product(DENSITY, SIEVE))
                        .present())
                .isEqualTo(ranked(new RankContext(28, 0.41, 850, 850, 0.74, "", 30.0, false), List.of(), SIEVE));
    }

    @Test
    void theProductAndTheTramlinesComeFirst() {
        Entered known = two().with(MatchPaths.CHOSEN, "a");
        for (Assessed<MatchResult> assessed : List.of(
                assess(known, MACHINE, product(null, SIEVE)),
                assess(known.with(StartPaths.TRAMLINE_WIDTH, ""), MACHINE, product(DENSITY, SIEVE)))) {
            assertThat(assessed.result()).isNull();
            assertThat(lines(assessed.findings())).containsExactly("MISSING MATCH missing.productFirst  []");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "true, a, UNANSWERED, ''", "true, b, NO, ''", "true, '', UNANSWERED, missing.chosen",
                "true, c, NO, missing.chosen",
        "true, '', YES, ''", "true, c, YES, ''", "false, '', YES, ''", "false, '', NO, missing.noReference",
        "false, a, UNANSWERED, missing.noReference"
    })
    void oneIsChosenOrNoneIsWanted(boolean library, String chosen, YesNo without, String missing) {
        Entered entered = (library ? two() : field())
                .with(MatchPaths.CHOSEN, chosen)
                .with(MatchPaths.START_WITHOUT_REFERENCE, without);
        assertThat(lines(assess(entered, MACHINE, product(DENSITY, SIEVE)).findings()).stream()
                        .filter(line -> line.contains(" missing.")))
                .isEqualTo(missing.isEmpty() ? List.of() : List.of("NOTE MATCH " + missing + " /match/chosen []"));
    }

    @Test
    void theLibraryReportsFirstAndTheResultLast() {
        Entered entered = tested(two(), 2, "b", "28 m", "1 kg/L").with(MatchPaths.CHOSEN, "a");
        List<String> found =
                lines(assess(entered, MACHINE, product(DENSITY, SIEVE)).findings());
        assertThat(found.get(0)).isEqualTo("STOP MATCH match.idTwice /match/library/2/id [b]");
        assertThat(found).hasSizeGreaterThan(1).noneMatch(line -> line.contains("missing."));
        assertThat(found.get(1)).contains("Product a");
    }

    @Test
    void theMonitorMayEndTheSimulation() {
        MatchResult result = MatchAssessor.assess(
                        two().with(MatchPaths.CHOSEN, "a").read(),
                        MACHINE,
                        product(DENSITY, SIEVE),
                        new AssessOptions(5, 100_000, done -> false))
                .present();
        assertThat(result.redraws()).isLessThan(100_000);
    }
}
