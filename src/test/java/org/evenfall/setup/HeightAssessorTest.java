package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import org.evenfall.flight.Throw;
import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.ParticleDensity;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.Sieves;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.setup.path.HeightPaths;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The height over the crop. Crop 20 and 30 cm, 10 cm of growth, wanted 75 cm: (20 + 30) / 2 + 10 / 2 + 75 = 105 cm. */
class HeightAssessorTest {

    private static final MachineProfile MACHINE = MachineDefaultsTest.machine(null, null, 0.70);
    private static final ParticleDensity PARTICLE = new ParticleDensity(1340, 20, 0.56, true, 1340, false);
    private static final SieveResult SIEVE = Sieves.analyse(List.of(2.0, 4.0), List.of(List.of(7.0, 84.0, 9.0)));
    private static final Throw FLIGHT = new Throw(36, 15, 17, 0.5, 9);

    private static ProductResult product(
            @Nullable ParticleDensity particle, @Nullable SieveResult sieve, @Nullable Throw flight) {
        return new ProductResult(
                null, sieve, sieve == null ? null : sieve.distribution(), particle, null, flight, List.of(), null);
    }

    private static Entered measured(String left, String right) {
        return Entered.inEmpty()
                .withAll(HeightPaths.CROP_HEIGHTS, "20 cm", "", "30 cm")
                .with(HeightPaths.GROWTH, "10 cm")
                .with(HeightPaths.WANTED, "75 cm")
                .with(HeightPaths.LEFT, left)
                .with(HeightPaths.RIGHT, right);
    }

    private static Assessed<HeightResult> assess(Entered entered) {
        return HeightAssessor.assess(entered.read(), MACHINE, product(null, null, null), null);
    }

    private static List<String> findings(Entered entered) {
        return lines(assess(entered).findings());
    }

    private static List<String> when(boolean reported, String line) {
        return reported ? List.of(line) : List.of();
    }

    /** Now (106 + 105) / 2 = 105.5 cm: 80.5 over the crop now, 0.5 too high; chain 75 − 10 = 65 cm. */
    @Test
    void everyEntryIsInItsOwnPlace() {
        HeightResult result = assess(measured("106 cm", "105 cm")
                        .with(HeightPaths.FRONT, "107 cm")
                        .with(HeightPaths.REAR, "104 cm")
                        .with(HeightPaths.CHAIN_POINT, "-10 cm"))
                .present();
        assertThat(result.crop().meanM()).isCloseTo(0.25, within(1e-9));
        assertThat(result.crop().spreadM()).isCloseTo(0.10, within(1e-9));
        assertThat(result.crop().laterM()).isCloseTo(0.30, within(1e-9));
        assertThat(result.wantedOverCropM()).isEqualTo(0.75);
        assertThat(result.overGroundM()).isCloseTo(1.05, within(1e-9));
        assertThat(result.now().leftRightM()).isCloseTo(0.01, within(1e-9));
        assertThat(result.now().foreAftM()).isCloseTo(0.03, within(1e-9));
        assertThat(result.now().overCropM()).isCloseTo(0.805, within(1e-9));
        assertThat(result.now().correctionM()).isCloseTo(-0.005, within(1e-9));
        assertThat(result.chainM()).isCloseTo(0.65, within(1e-9));
        assertThat(result.throwPer10CmM()).isNull();
    }

    /** Without growth 25 + 75 = 100 cm; a chain from the reference point is 75 cm. */
    @Test
    void growthAndChainPointAreZeroWhereNotTyped() {
        HeightResult result =
                assess(measured("100 cm", "99 cm").with(HeightPaths.GROWTH, "")).present();
        assertThat(result.overGroundM()).isCloseTo(1.00, within(1e-9));
        assertThat(result.chainM()).isCloseTo(0.75, within(1e-9));
    }

    @Test
    void whatIsMissing() {
        String crop = "MISSING HEIGHT missing.cropHeight /height/cropHeights []";
        String hitch = "MISSING HEIGHT missing.hitchHeight /height/left []";
        assertThat(findings(Entered.inEmpty())).containsExactly(crop, hitch);
        assertThat(assess(Entered.inEmpty()).result()).isNull();
        assertThat(findings(measured("", "105 cm"))).containsExactly(hitch);
        assertThat(findings(measured("105 cm", ""))).containsExactly(hitch);
        Entered noCrop = measured("106 cm", "105 cm").withAll(HeightPaths.CROP_HEIGHTS, "");
        assertThat(findings(noCrop)).containsExactly(crop);
        assertThat(assess(noCrop).result()).isNull();
    }

    /** The typed height, else that of the settings to start from, else that of the handbook; a typing error is none of them. */
    @ParameterizedTest
    @CsvSource({"75 cm, 0.8, 0.75", "'', 0.8, 0.8", "'', , 0.7", "x, 0.8, ", "x, , "})
    void whichHeightIsWanted(String typed, @Nullable Double setting, @Nullable Double wanted) {
        Entered entered = measured("106 cm", "105 cm").with(HeightPaths.WANTED, typed);
        Assessed<HeightResult> assessed =
                HeightAssessor.assess(entered.read(), MACHINE, product(null, null, null), setting);
        String missing = "MISSING HEIGHT missing.wantedHeight /height/wanted []";
        assertThat(lines(assessed.findings()).contains(missing)).isEqualTo(wanted == null);
        assertThat(assessed.result() == null ? null : assessed.result().wantedOverCropM())
                .isEqualTo(wanted);
    }

    @Test
    void noHeightAtAllIsMissing() {
        Entered entered = measured("106 cm", "105 cm").with(HeightPaths.WANTED, "");
        MachineProfile unknown = MachineDefaultsTest.machine(null, null, null);
        assertThat(lines(HeightAssessor.assess(entered.read(), unknown, product(null, null, null), null)
                        .findings()))
                .containsExactly("MISSING HEIGHT missing.wantedHeight /height/wanted []");
    }

    /** 105 cm wanted over the ground; left is 1 cm above right. */
    @ParameterizedTest
    @CsvSource({
        "100.5, 99.5, ''",
        "100.4, 99.4, raise",
        "100.6, 99.6, ''",
        "110.5, 109.5, ''",
        "110.6, 109.6, lower",
        "110.4, 109.4, ''"
    })
    void aCorrectionOfMoreThanFiveCentimetres(String left, String right, String way) {
        assertThat(findings(measured(left + " cm", right + " cm")))
                .isEqualTo(when(!way.isEmpty(), "WARNING HEIGHT height." + way + " /height/left [5.1:0 cm, 105:0 cm]"));
    }

    @ParameterizedTest
    @CsvSource({"105, 103.1, false", "105, 103, false", "105, 102.9, true", "103, 105, false", "102.9, 105, true"})
    void leftAndRightMayDifferByTwoCentimetres(String left, String right, boolean reported) {
        assertThat(findings(measured(left + " cm", right + " cm")))
                .isEqualTo(when(reported, "WARNING HEIGHT height.leftRight /height/right [2.1:0 cm]"));
    }

    @ParameterizedTest
    @CsvSource({"34.9, false", "35, false", "35.1, true"})
    void anUnevenCropIsNoted(String highest, boolean reported) {
        Entered entered =
                measured("106 cm", "105 cm").withAll(HeightPaths.CROP_HEIGHTS, "26 cm", highest + " cm", "20 cm");
        assertThat(findings(entered))
                .isEqualTo(when(reported, "NOTE HEIGHT height.unevenCrop /height/cropHeights [15.1:0 cm]"));
    }

    /** 5 cm above and 5 cm below the 75 cm wanted: 80 and 70 cm. */
    @Test
    void whatTenCentimetresDoToTheThrow() {
        HeightResult result = HeightAssessor.assess(
                        measured("106 cm", "105 cm").read(), MACHINE, product(PARTICLE, SIEVE, FLIGHT), null)
                .present();
        double d50 = SIEVE.distribution().d50Mm();
        assertThat(result.throwPer10CmM())
                .isCloseTo(
                        ThrowModel.distanceM(d50, 1340, 36, 0.80) - ThrowModel.distanceM(d50, 1340, 36, 0.70),
                        within(1e-9));
        assertThat(result.throwPer10CmM()).isPositive();
    }

    @Test
    void theThrowNeedsAProduct() {
        for (ProductResult open : List.of(
                product(null, SIEVE, FLIGHT), product(PARTICLE, null, FLIGHT), product(PARTICLE, SIEVE, null))) {
            assertThat(HeightAssessor.assess(measured("106 cm", "105 cm").read(), MACHINE, open, null)
                            .present()
                            .throwPer10CmM())
                    .isNull();
        }
    }
}
