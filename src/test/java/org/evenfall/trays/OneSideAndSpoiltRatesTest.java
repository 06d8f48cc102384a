package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.trays.LobeMachine.Fault;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How often a fault is found, and how often there is a false alarm, on simulated machines; seeded. */
@Tag("slow")
class OneSideAndSpoiltRatesTest {

    private static final int MACHINES = 200;

    private record Case(LobeMachine machine, TrayCatches test) {
        boolean oneSided() {
            return MirrorPairs.of(UniformityCalculator.of(test), machine.tramlines())
                    .significant();
        }
    }

    private static List<Case> cases(Fault fault, boolean misSet, DrivingPattern pattern, int trays) {
        return IntStream.range(0, MACHINES)
                .mapToObj(i -> {
                    LobeMachine machine = LobeMachine.draw(i, misSet, fault, pattern);
                    return new Case(machine, machine.test(trays, 7777 + i));
                })
                .toList();
    }

    private static double percent(List<Case> cases, java.util.function.Predicate<Case> which) {
        return 100.0 * cases.stream().filter(which).count() / cases.size();
    }

    /** At least, at most: per cent of tests that are found one-sided. */
    @ParameterizedTest
    @CsvSource({
        "NONE, false, BACK_AND_FORTH, 7, 0, 3",
        "NONE, true, BACK_AND_FORTH, 7, 0, 3",
        "NONE, false, ROUND_AND_ROUND, 7, 0, 3",
        "NONE, true, ROUND_AND_ROUND, 7, 0, 3",
        "NONE, true, BACK_AND_FORTH, 11, 0, 3",
        "BADLY_WORN_VANE, false, BACK_AND_FORTH, 7, 80, 100",
        "BADLY_WORN_VANE, true, BACK_AND_FORTH, 7, 78, 100",
        "BADLY_WORN_VANE, false, BACK_AND_FORTH, 11, 84, 100",
        "BADLY_WORN_VANE, false, ROUND_AND_ROUND, 7, 50, 100",
        "BADLY_WORN_VANE, true, ROUND_AND_ROUND, 7, 60, 100",
        "OUTLET_25_PERCENT_LOW, false, BACK_AND_FORTH, 7, 95, 100",
        "OUTLET_25_PERCENT_LOW, true, BACK_AND_FORTH, 7, 93, 100"
    })
    void oneSide(Fault fault, boolean misSet, DrivingPattern pattern, int trays, double least, double most) {
        assertThat(percent(cases(fault, misSet, pattern, trays), Case::oneSided))
                .isBetween(least, most);
    }

    private static Optional<SpoiltTray> spoilt(Case one, int tray, double factor) {
        List<Double> grams = new ArrayList<>(one.test().catchesG());
        grams.set(tray, Math.round(10 * factor * grams.get(tray)) / 10.0);
        TrayCatches test = one.test();
        return SpoiltTray.of(
                UniformityCalculator.of(new TrayCatches(
                        test.positionsM(),
                        grams,
                        test.tramlineWidthM(),
                        test.pattern(),
                        test.trayAreaM2(),
                        test.runs(),
                        test.meanGranuleG(),
                        test.readingStepG())),
                one.machine().tramlines());
    }

    /** A tray typed as 0, as half and as twice: at least so many per cent are found on a well set machine. */
    @ParameterizedTest
    @CsvSource({"7, 0, 97", "7, 0.5, 72", "7, 2, 92", "11, 0, 97", "11, 0.5, 93", "11, 2, 96"})
    void aSpoiltTrayIsFound(int trays, double factor, double least) {
        List<Case> cases = cases(Fault.NONE, false, DrivingPattern.BACK_AND_FORTH, trays);
        int[] wrong = {0};
        double found = percent(cases, one -> {
            int tray = cases.indexOf(one) % trays;
            Optional<SpoiltTray> spoilt = spoilt(one, tray, factor);
            wrong[0] += spoilt.isPresent() && spoilt.get().index() != tray ? 1 : 0;
            return spoilt.filter(each -> each.index() == tray).isPresent();
        });
        assertThat(found).isGreaterThanOrEqualTo(least);
        assertThat(wrong[0]).isLessThanOrEqualTo(MACHINES / 50);
    }

    /** Good tests, whatever the machine: less than 3 % are doubted. */
    @Test
    void aGoodTestIsNotDoubted() {
        List<Case> all = new ArrayList<>();
        for (DrivingPattern pattern : List.of(DrivingPattern.BACK_AND_FORTH, DrivingPattern.ROUND_AND_ROUND)) {
            for (boolean misSet : new boolean[] {false, true}) {
                all.addAll(cases(Fault.NONE, misSet, pattern, 7));
                all.addAll(cases(Fault.BADLY_WORN_VANE, misSet, pattern, 7));
            }
        }
        assertThat(percent(all, one -> spoilt(one, 0, 1).isPresent())).isLessThan(3);
    }

    /** Round and round the outermost trays lie on one place: the one that was halved is always among the two. */
    @Test
    void trayAndTwin() {
        List<Case> cases = cases(Fault.NONE, false, DrivingPattern.ROUND_AND_ROUND, 7);
        for (Case one : cases.subList(0, 60)) {
            spoilt(one, 0, 0.3)
                    .ifPresent(each ->
                            assertThat(each.index() == 0 || each.twin() == 0).isTrue());
        }
        assertThat(cases.subList(0, 60).stream()
                        .filter(one -> spoilt(one, 0, 0.3).isPresent()))
                .hasSizeGreaterThan(30);
    }
}
