package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.flight.ThrowModel;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReachTest {

    private static final double Z = 1.6449;

    private static RankContext field(double widthM, double highestRpm, @Nullable Double handbookM, boolean lever) {
        return RankContext.of(widthM, 0.40, 850.0, highestRpm, 0.75, "").reaching(handbookM, lever);
    }

    private static Reach.Answer widest(RankContext context, Candidate candidate, TestedProduct... references) {
        Comparisons product = Comparisons.of(candidate, context);
        return Reach.widest(
                context,
                product.with(List.of(references)),
                product.alone(),
                product.aloneThrow().edge());
    }

    private static Reach.Answer urea(RankContext context, TestedProduct... references) {
        return widest(context, Examples.urea(0.75, 3.2), references);
    }

    @Test
    void aReferenceReachesItsTestedWidth() {
        assertThat(urea(field(28, 850, null, false), Examples.tested(24, 0.75, 3.2))
                        .widestM())
                .isCloseTo(24, within(1e-9));
        // the wider of two references counts, whichever comes first
        assertThat(urea(
                                field(28, 850, null, false),
                                Examples.tested(21, 0.75, 3.2),
                                Examples.tested(27, 0.75, 3.2),
                                Examples.tested(24, 0.75, 3.2))
                        .widestM())
                .isCloseTo(27, within(1e-9));
    }

    @Test
    void aDenserReferenceReachesLessWithALighterProduct() {
        RankContext context = field(28, 850, null, false);
        Comparisons product = Comparisons.of(Examples.urea(0.75, 3.2), context);
        TestedProduct dense = Examples.tested(28, 1.0, 3.4);
        Comparison comparison = product.with(List.of(dense)).get(0);
        assertThat(urea(context, dense).widestM())
                .isCloseTo(
                        28
                                * comparison.productThrow.edge().metres()
                                / comparison.otherThrow.edge().metres(),
                        within(1e-9))
                .isLessThan(27);
    }

    private static Reachability reachability(double widthM, TestedProduct reference) {
        return urea(field(widthM, 850, null, false), reference).reachability();
    }

    /** Yes up to the widest, 1 % more counts as the same; doubtful up to the 90 % error of measurements and model. */
    @Test
    void theMarginOfAReference() {
        TestedProduct reference = Examples.tested(24, 0.75, 3.2);
        Comparison comparison = Comparisons.of(Examples.urea(0.75, 3.2), Examples.FIELD)
                .with(List.of(reference))
                .get(0);
        double error = comparison.throwErrorM() / comparison.otherThrow.edge().metres();
        double limit = 24 * (1 + Z * Math.hypot(error, 0.05));
        assertThat(limit).isGreaterThan(26);
        assertThat(reachability(24.2, reference)).isEqualTo(Reachability.YES);
        assertThat(reachability(24.25, reference)).isEqualTo(Reachability.DOUBTFUL);
        assertThat(reachability(limit - 0.01, reference)).isEqualTo(Reachability.DOUBTFUL);
        assertThat(reachability(limit + 0.01, reference)).isEqualTo(Reachability.PROBABLY_NOT);
    }

    /** The handbook's width holds for a dense product and is scaled by the throws. */
    @Test
    void theHandbookAndItsMargin() {
        double speed = ThrowModel.outletSpeedMPerS(0.40, 850);
        ThrowLine dense = ThrowLine.of(Reach.dense(), ThrowLine.EDGE_Z, speed, 0.75);
        Comparisons product = Comparisons.of(Examples.urea(0.75, 3.2), Examples.FIELD);
        double widest = 30 * product.aloneThrow().edge().metres() / dense.metres();
        assertThat(urea(field(28, 850, 30.0, false)).widestM()).isCloseTo(widest, within(1e-9));
        double own = product.aloneThrow().edge().errorM(0.02 / 0.75, 0.015, 0.01);
        double packing = Math.hypot(0.03 / 0.59, 0.04 / 0.56);
        double theirs = dense.errorM(Math.hypot(0.015, packing), 0.05, 0.03);
        double limit = widest * (1 + Z * Math.hypot(Math.hypot(own, theirs) / dense.metres(), 0.05));
        assertThat(urea(field(limit - 0.01, 850, 30.0, false)).reachability()).isEqualTo(Reachability.DOUBTFUL);
        assertThat(urea(field(limit + 0.01, 850, 30.0, false)).reachability()).isEqualTo(Reachability.PROBABLY_NOT);
    }

    @Test
    void theWiderEvidenceCounts() {
        RankContext context = field(28, 850, 20.0, false);
        assertThat(urea(context, Examples.tested(27, 0.75, 3.2)).widestM()).isCloseTo(27, within(1e-9));
        RankContext wide = field(28, 850, 48.0, false);
        assertThat(urea(wide, Examples.tested(27, 0.75, 3.2)).widestM())
                .isEqualTo(urea(wide).widestM())
                .isGreaterThan(30);
    }

    /** Nothing known of the machine: the throw must be 0.6 of the width; 12 % for the model. */
    @Test
    void withNothingKnownTheThrowItselfDecides() {
        ThrowLine line = Comparisons.of(Examples.urea(0.75, 3.2), Examples.FIELD)
                .aloneThrow()
                .edge();
        double widest = line.metres() / 0.6;
        assertThat(urea(field(28, 850, null, false)).widestM()).isCloseTo(widest, within(1e-9));
        double error = line.errorM(0.02 / 0.75, 0.015, 0.01) / line.metres();
        double limit = widest * (1 + Z * Math.hypot(error, 0.12));
        assertThat(urea(field(limit - 0.01, 850, null, false)).reachability()).isEqualTo(Reachability.DOUBTFUL);
        assertThat(urea(field(limit + 0.01, 850, null, false)).reachability()).isEqualTo(Reachability.PROBABLY_NOT);
    }

    @Test
    void aLeverThatThrowsWiderGainsFivePercent() {
        assertThat(urea(field(28, 850, null, true), Examples.tested(24, 0.75, 3.2))
                        .widestM())
                .isCloseTo(24 * 1.05, within(1e-9));
        // a lever has no part in what the handbook says
        assertThat(urea(field(28, 850, 30.0, true)).widestM())
                .isEqualTo(urea(field(28, 850, 30.0, false)).widestM());
    }

    /**
     * Source: Grift, Hofstee 1997: above 52 m/s nearly all granules broke. It is reached between 850 and 1100 rpm of a disc
     * of 0.40 m.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1100, 1300})
    void noDiscSpeedGainsBeyondTheSpeedAtWhichGranulesBreak(double rpm) {
        double low = 850;
        double high = 1100;
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            if (ThrowModel.outletSpeedMPerS(0.40, middle) < 52) {
                low = middle;
            } else {
                high = middle;
            }
        }
        TestedProduct reference = Examples.tested(24, 0.75, 3.2);
        double atTheLimit = urea(field(28, low, null, false), reference).widestM();
        assertThat(atTheLimit).isGreaterThan(24.3);
        assertThat(urea(field(28, rpm, null, false), reference).widestM()).isCloseTo(atTheLimit, within(1e-6));
        assertThat(urea(field(28, low - 20, null, false), reference).widestM()).isLessThan(atTheLimit - 0.1);
    }

    /** A disc already faster than that keeps what it has: the settings in use can be kept. */
    @Test
    void theSettingsInUseCanBeKept() {
        RankContext fast = RankContext.of(28, 0.40, 1200.0, 1200.0, 0.75, "");
        assertThat(urea(fast, Examples.tested(24, 0.75, 3.2)).widestM()).isCloseTo(24, within(1e-9));
    }

    @Test
    void theDenseProduct() {
        EstimatedProperties dense = Reach.dense();
        assertThat(dense.bulkKgPerL()).isEqualTo(1.0);
        assertThat(dense.bulkError()).isEqualTo(0.015);
        assertThat(dense.d50Mm()).isEqualTo(3.25);
        assertThat(dense.sigma()).isCloseTo(0.18, within(1e-12));
    }
}
