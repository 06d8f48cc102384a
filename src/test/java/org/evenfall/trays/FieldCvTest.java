package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.trays.TestFields.BACK_AND_FORTH;
import static org.evenfall.trays.TestFields.ROUND_AND_ROUND;
import static org.evenfall.trays.TestFields.WIDTH_M;
import static org.evenfall.trays.TestFields.places;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldCvTest {

    private static final List<Double> ONE_SIDED = List.of(12.6, 11.0, 10.9, 10.2, 9.7, 9.1, 8.8);

    /** Two roots by bisection to 0.0001 % each. */
    private static final Offset<Double> SAME = within(1e-3);

    private static List<Double> numbers(String text) {
        return Arrays.stream(text.split(" ")).map(Double::valueOf).toList();
    }

    private static List<Double> times(double factor, List<Double> values) {
        return values.stream().map(value -> factor * value).toList();
    }

    private static void assertAlike(FieldCv one, FieldCv other) {
        assertThat(one.medianPercent()).isCloseTo(other.medianPercent(), SAME);
        assertThat(one.lowPercent()).isCloseTo(other.lowPercent(), SAME);
        assertThat(one.highPercent()).isCloseTo(other.highPercent(), SAME);
        assertThat(one.probabilityAtMost15()).isCloseTo(other.probabilityAtMost15(), within(1e-9));
    }

    /** Places are given as a share of the width. */
    @ParameterizedTest
    @CsvFileSource(resources = "field-cv.csv", numLinesToSkip = 1)
    void theVectorsOfTheOtherImplementationAreMet(
            String places,
            String catches,
            double noisePercent,
            DrivingPattern driving,
            double median,
            double low,
            double high,
            double chancePercent) {
        FieldCv field = FieldCv.of(
                times(WIDTH_M, numbers(places)), numbers(catches), new Tramlines(WIDTH_M, driving), noisePercent);
        assertThat(field.medianPercent()).isCloseTo(median, within(0.05));
        assertThat(field.lowPercent()).isCloseTo(low, within(0.05));
        assertThat(field.highPercent()).isCloseTo(high, within(0.05));
        assertThat(100 * field.probabilityAtMost15()).isCloseTo(chancePercent, within(0.05));
    }

    private static FieldCv manyQuietTrays(Tramlines tramlines, DoubleUnaryOperator amountAtPhase) {
        List<Double> places =
                IntStream.range(0, 33).mapToObj(i -> WIDTH_M * (i / 32.0 - 0.5)).toList();
        List<Double> catches = places.stream()
                .map(x -> amountAtPhase.applyAsDouble(Math.PI * x / WIDTH_M))
                .toList();
        return FieldCv.of(places, catches, tramlines, 0);
    }

    /** A sum of waves over a mean of 1 has the CV √(Σ amplitude² / 2), exactly. */
    @ParameterizedTest
    @CsvSource({"0.2, 0.1, 0.05", "0.02, 0, 0.01", "0.3, -0.2, 0.1", "-0.05, 0.15, 0"})
    void manyTraysWithoutNoiseGiveTheTrueCv(double centre, double side, double ripple) {
        double exact = 100 * Math.sqrt((centre * centre + side * side + ripple * ripple) / 2);
        for (Tramlines tramlines : List.of(BACK_AND_FORTH, ROUND_AND_ROUND)) {
            // the side that is the first one possible with each way of driving
            int turns = tramlines == BACK_AND_FORTH ? 1 : 2;
            FieldCv field = manyQuietTrays(
                    tramlines,
                    phase -> 1
                            + centre * Math.cos(2 * phase)
                            + side * Math.sin(turns * phase)
                            + ripple * Math.cos(6 * phase));
            assertThat(field.medianPercent()).isCloseTo(exact, within(0.1));
            assertThat(field.intervalPercent().width()).isLessThan(0.5);
        }
    }

    /** The tray CV of this field is 16.5 %, since both end trays are one place; the field's is 14.14 %, exactly. */
    @Test
    void theTwoEndTraysAreOnePlace() {
        List<Double> catches = places(7).stream()
                .map(x -> 1 + 0.2 * Math.cos(2 * Math.PI * x / WIDTH_M))
                .toList();
        FieldCv field = FieldCv.of(places(7), catches, BACK_AND_FORTH, 0);
        assertThat(UniformityCalculator.cvPercent(catches)).isCloseTo(16.5073, within(1e-4));
        assertThat(field.medianPercent()).isCloseTo(14.142, within(0.5));
    }

    @Test
    void noiseAloneIsNoUnevenness() {
        Random random = new Random(5);
        List<Double> catches = IntStream.range(0, 33)
                .mapToObj(i -> 1 + 0.08 * random.nextGaussian())
                .toList();
        List<Double> places = places(33);
        assertThat(FieldCv.of(places, catches, BACK_AND_FORTH, 8).medianPercent())
                .isLessThan(4);
        assertThat(FieldCv.of(places, catches, BACK_AND_FORTH, 2).medianPercent())
                .isGreaterThan(5);
    }

    @Test
    void theMirroredTestIsAlike() {
        for (Tramlines tramlines : List.of(BACK_AND_FORTH, ROUND_AND_ROUND)) {
            assertAlike(
                    FieldCv.of(numbers("-12 -7 -4.5 0 3 8 11"), ONE_SIDED, tramlines, 4),
                    FieldCv.of(numbers("12 7 4.5 0 -3 -8 -11"), ONE_SIDED, tramlines, 4));
        }
    }

    @Test
    void unitsDoNotMatter() {
        FieldCv field = FieldCv.of(places(7), ONE_SIDED, BACK_AND_FORTH, 4);
        assertAlike(FieldCv.of(places(7), times(1e-4, ONE_SIDED), BACK_AND_FORTH, 4), field);
        assertAlike(
                FieldCv.of(
                        times(1.75, places(7)),
                        times(1e5, ONE_SIDED),
                        new Tramlines(1.75 * WIDTH_M, DrivingPattern.BACK_AND_FORTH),
                        4),
                field);
    }

    @Test
    void theOrderOfTheTraysDoesNotMatter() {
        List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3, 4, 5, 6));
        Collections.shuffle(order, new Random(3));
        assertAlike(
                FieldCv.of(
                        order.stream().map(places(7)::get).toList(),
                        order.stream().map(ONE_SIDED::get).toList(),
                        BACK_AND_FORTH,
                        4),
                FieldCv.of(places(7), ONE_SIDED, BACK_AND_FORTH, 4));
        assertThat(FieldCv.of(places(7), numbers("11.0 12.6 10.9 10.2 9.7 9.1 8.8"), BACK_AND_FORTH, 4)
                        .medianPercent())
                .isNotCloseTo(
                        FieldCv.of(places(7), ONE_SIDED, BACK_AND_FORTH, 4).medianPercent(), within(0.1));
    }

    /** Round and round both ends are one place, back and forth they are two. */
    @Test
    void theWayOfDrivingMatters() {
        FieldCv round = FieldCv.of(places(7), ONE_SIDED, ROUND_AND_ROUND, 4);
        assertThat(round.medianPercent())
                .isNotCloseTo(
                        FieldCv.of(places(7), ONE_SIDED, BACK_AND_FORTH, 4).medianPercent(), within(0.5));
        assertThat(FieldCv.of(places(7), ONE_SIDED, new Tramlines(WIDTH_M, DrivingPattern.UNANSWERED), 4))
                .isEqualTo(FieldCv.of(places(7), ONE_SIDED, BACK_AND_FORTH, 4));
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 33})
    void fiveAndThirtyThreeTraysAreEnough(int trays) {
        List<Double> places = places(trays);
        List<Double> catches = places.stream().map(x -> 10 + Math.cos(x / 4)).toList();
        FieldCv field = FieldCv.of(places, catches, BACK_AND_FORTH, 3);
        assertThat(field.medianPercent()).isBetween(3.0, 12.0);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 4, 34})
    void fewerAndMoreAreRefused(int trays) {
        List<Double> places = IntStream.range(0, trays).mapToObj(i -> 0.5 * i).toList();
        assertThatThrownBy(() -> FieldCv.of(places, Collections.nCopies(trays, 1.0), BACK_AND_FORTH, 3))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aMissingTrayLeavesLessKnown() {
        List<Double> places = new ArrayList<>(places(7));
        List<Double> catches = new ArrayList<>(numbers("9 10 11 10 9 10 11"));
        double all = FieldCv.of(places, catches, BACK_AND_FORTH, 4.5)
                .intervalPercent()
                .width();
        places.remove(1);
        catches.remove(1);
        places.remove(1);
        catches.remove(1);
        assertThat(FieldCv.of(places, catches, BACK_AND_FORTH, 4.5)
                        .intervalPercent()
                        .width())
                .isGreaterThan(all);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 5})
    void twoTraysMayBeAtOnePlace(double noisePercent) {
        List<Double> places = numbers("-12 -6 0 0 6 12");
        FieldCv one = FieldCv.of(places, numbers("10 11 9 11 12 8"), BACK_AND_FORTH, noisePercent);
        assertAlike(one, FieldCv.of(places, numbers("10 11 11 9 12 8"), BACK_AND_FORTH, noisePercent));
        assertThat(one.medianPercent()).isBetween(3.0, 40.0);
    }

    @Test
    void anEmptyTrayCounts() {
        List<Double> places = places(7);
        FieldCv field = FieldCv.of(places, numbers("10 10 0 10 10 10 10"), BACK_AND_FORTH, 5);
        assertThat(field.verdict()).isEqualTo(EvennessVerdict.DO_NOT_SPREAD);
        assertThat(FieldCv.of(places, numbers("10 0 0 0 0 0 0"), BACK_AND_FORTH, 5)
                        .medianPercent())
                .isGreaterThan(field.medianPercent());
    }

    /** Whatever is typed has a result. */
    @Test
    void extremeCatchesHaveAResult() {
        Random random = new Random(8);
        for (int repeat = 0; repeat < 200; repeat++) {
            int trays = 5 + random.nextInt(29);
            List<Double> places = new ArrayList<>();
            List<Double> catches = new ArrayList<>();
            for (int i = 0; i < trays; i++) {
                places.add(repeat % 3 == 0 ? 2.0 : WIDTH_M * (random.nextDouble() - 0.5) * (1 + repeat % 4));
                catches.add(random.nextDouble() < 0.7 ? 0 : Math.pow(10, 6 * random.nextDouble() - 3));
            }
            catches.set(repeat % trays, 1.0);
            for (double noise : new double[] {0, 0.5, 30, 1000}) {
                FieldCv field = FieldCv.of(places, catches, repeat % 2 == 0 ? BACK_AND_FORTH : ROUND_AND_ROUND, noise);
                assertThat(field.highPercent()).isBetween(field.medianPercent(), 600.0);
            }
        }
    }

    @Test
    void valuesOutOfRangeAreRefused() {
        List<Double> places = places(5);
        List<Double> even = Collections.nCopies(5, 1.0);
        assertThatThrownBy(() -> FieldCv.of(places, Collections.nCopies(5, 0.0), BACK_AND_FORTH, 5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FieldCv.of(places, numbers("1 1 -0.001 1 1"), BACK_AND_FORTH, 5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FieldCv.of(places, numbers("1 1 NaN 1 1"), BACK_AND_FORTH, 5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FieldCv.of(numbers("1 1 NaN 1 1"), even, BACK_AND_FORTH, 5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FieldCv.of(places(7), even, BACK_AND_FORTH, 5))
                .isInstanceOf(IllegalArgumentException.class);
        for (double noise : new double[] {-0.001, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> FieldCv.of(places, even, BACK_AND_FORTH, noise))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "10, 5, 11, 1.0001",
        "10, 5, 11, -0.0001",
        "10, 5, 11, NaN",
        "4.9, 5, 11, 0.5",
        "11.1, 5, 11, 0.5",
        "NaN, 5, 11, 0.5",
        "1, -0.1, 11, 0.5"
    })
    void aResultOutOfRangeIsRefused(double median, double low, double high, double chance) {
        assertThatThrownBy(() -> new FieldCv(median, new Interval(low, high), chance))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"9.99, 0.95, true", "10, 0.90, true", "10.01, 0.95, false", "9, 0.8999, false"})
    void goodIsEvenWithAMedianOfAtMostTen(double median, double chance, boolean good) {
        FieldCv field = new FieldCv(median, new Interval(0, 50), chance);
        assertThat(field.good()).isEqualTo(good);
        assertThat(field.verdict()).isEqualTo(EvennessVerdict.of(median, chance));
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "0.0099, 1", "0.011, 1.1", "0.5, 50", "0.989, 98.9", "0.991, 99", "1, 99"})
    void theChanceIsNeverShownAsSurerThanTheModel(double chance, double shown) {
        assertThat(new FieldCv(10, new Interval(0, 50), chance).statedChancePercent())
                .isCloseTo(shown, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(
            value = DrivingPattern.class,
            names = {"BACK_AND_FORTH", "ROUND_AND_ROUND"})
    void moreUnevennessIsALargerCv(DrivingPattern driving) {
        double before = 0;
        for (double amplitude : new double[] {0.5, 1, 2, 4}) {
            List<Double> catches = places(7).stream()
                    .map(x -> 10 + amplitude * Math.cos(2 * Math.PI * x / WIDTH_M))
                    .toList();
            FieldCv field = FieldCv.of(places(7), catches, new Tramlines(WIDTH_M, driving), 4);
            assertThat(field.medianPercent()).isGreaterThan(before);
            before = field.medianPercent();
        }
    }
}
