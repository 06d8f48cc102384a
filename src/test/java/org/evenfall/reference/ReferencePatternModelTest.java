package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReferencePatternModelTest {

    private static final RankContext FIELD = RankContext.of(28, 0.40, 850.0, null, 0.75, "");

    private static Candidate urea(double density) {
        return new Candidate(ProductForm.GRANULAR_UREA, density, 0.005, sizes(3.2));
    }

    private static SizeDistribution sizes(double d50) {
        return new SizeDistribution(d50, 1.2, 0.015, 0.01, false);
    }

    private static TestedProduct tested(String id, double width, double density) {
        return new TestedProduct(id, id, ProductForm.GRANULAR_UREA, width, density, sizes(3.2));
    }

    /** Both of a form whose granule density has no upper limit. */
    private static PatternChange change(double density, double reference) {
        ProductForm form = ProductForm.AMMONIUM_NITRATE;
        return Objects.requireNonNull(ProductRanking.rank(
                        new Candidate(form, density, 0.005, sizes(3.2)),
                        List.of(new TestedProduct("a", "a", form, 28, reference, sizes(3.2))),
                        FIELD,
                        1,
                        50)
                .ranked()
                .get(0)
                .pattern());
    }

    @Test
    void theSameProductSpreadsTheSame() {
        PatternChange same = change(0.76, 0.76);
        assertThat(same.cvChangePercent()).isCloseTo(0, within(1e-9));
        assertThat(same.resetCvPercent()).isCloseTo(same.referenceCvPercent(), within(1e-9));
        assertThat(same.keptCvIntervalPercent().low()).isLessThanOrEqualTo(same.keptCvPercent());
        assertThat(same.keptCvIntervalPercent().high()).isGreaterThan(same.keptCvPercent());
    }

    /** The shorter it falls compared with what the discs are set for, the less even; setting anew corrects most of it. */
    @ParameterizedTest
    @ValueSource(doubles = {1.0, 0.9})
    void theLighterTheLessEven(double reference) {
        double before = 0;
        for (double lighter : new double[] {0.90, 0.80, 0.70}) {
            PatternChange change = change(lighter * reference, reference);
            assertThat(change.keptCvPercent()).isGreaterThan(before);
            assertThat(change.cvChangePercent())
                    .isCloseTo(change.keptCvPercent() - change.referenceCvPercent(), within(1e-9));
            before = change.keptCvPercent();
        }
        PatternChange urea = change(0.72 * reference, reference);
        assertThat(urea.keptCvPercent()).isGreaterThan(10);
        assertThat(urea.resetCvPercent()).isLessThan(urea.keptCvPercent() / 2);
    }

    @Test
    void anotherWidthHasNoPatternAndTheDenseProductIsUsed() {
        MatchResult match = ProductRanking.rank(urea(0.74), List.of(tested("wide", 36, 0.74)), FIELD, 1, 50);
        assertThat(match.ranked().get(0).pattern()).isNull();
        PatternOverlay overlay = Objects.requireNonNull(match.overlay());
        assertThat(overlay.otherId()).isEmpty();
        assertThat(Objects.requireNonNull(match.pattern()).cvChangePercent()).isPositive();
    }

    @Test
    void withoutALibraryItIsComparedWithADenseProduct() {
        MatchResult match = ProductRanking.rank(urea(0.74), List.of(), FIELD, 1, 50);
        PatternOverlay overlay = Objects.requireNonNull(match.overlay());
        int middle = overlay.positionsM().size() / 2;
        assertThat(overlay.positionsM().get(middle)).isZero();
        // thrown short, more of it lands in the middle
        assertThat(overlay.productPerM().get(middle))
                .isGreaterThan(overlay.otherPerM().get(middle));
        assertThat(overlay.productPerM().stream().mapToDouble(v -> v).sum() * 0.25)
                .isCloseTo(1, within(1e-9));
        assertThat(overlay.otherPerM().stream().mapToDouble(v -> v).sum() * 0.25)
                .isCloseTo(1, within(1e-9));
        assertThat(match.direction()).isEqualTo(Direction.WIDER);
    }

    @Test
    void theChosenOneIsOverlaid() {
        RankContext chosen = RankContext.of(28, 0.40, 850.0, null, 0.75, "b");
        MatchResult match =
                ProductRanking.rank(urea(0.74), List.of(tested("a", 28, 0.74), tested("b", 28, 1.0)), chosen, 1, 50);
        assertThat(Objects.requireNonNull(match.overlay()).otherId()).isEqualTo("b");
    }

    @Test
    void aMonitorFollowsTheSimulationAndMayEndIt() {
        List<TestedProduct> library = List.of(tested("a", 28, 0.74), tested("b", 28, 0.76));
        List<Double> shares = new ArrayList<>();
        MatchResult whole = ProductRanking.rank(urea(0.75), library, FIELD, 1, 5000, shares::add);
        assertThat(shares).isSorted().hasSizeGreaterThan(10).allMatch(done -> done >= 0 && done < 1);
        assertThat(whole.redraws()).isEqualTo(5000);
        MatchResult ended = ProductRanking.rank(urea(0.75), library, FIELD, 1, 5000, done -> done < 0.5);
        assertThat(ended.redraws()).isBetween(2500, 3000);
        assertThat(ended.ranked().stream()
                        .mapToDouble(RankedProduct::closestShare)
                        .sum())
                .isCloseTo(1, within(1e-9));
        assertThat(ProductRanking.rank(urea(0.75), library, FIELD, 1, 5000, done -> false)
                        .redraws())
                .isEqualTo(256);
    }

    /** A narrow or a wide tramline: the model always finds settings that spread the reference fairly evenly. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(doubles = {12, 18, 24, 30, 36})
    void theModelCanBeSetForEveryOrdinaryWidth(double width) {
        RankContext field = RankContext.of(width, 0.40, 850.0, null, 0.75, "");
        MatchResult match = ProductRanking.rank(urea(1.0), List.of(tested("a", width, 1.0)), field, 1, 50);
        assertThat(Objects.requireNonNull(match.ranked().get(0).pattern()).referenceCvPercent())
                .isLessThan(10);
    }
}
