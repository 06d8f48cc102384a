package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever levers, scales, widths and trays a machine has: an advice that can be followed. Seeded. */
class AnyMachineTest {

    private static final double[] STEPS = {0.05, 0.25, 0.5, 1, 2.5, 10};

    private record Case(AdviceInput input) {

        static Case draw(Random random) {
            List<Lever> levers = new ArrayList<>();
            int count = random.nextInt(6);
            for (int j = 0; j < count; j++) {
                double step = STEPS[random.nextInt(STEPS.length)];
                double lowest = random.nextInt(5) * step - 3 * step;
                levers.add(new Lever(
                        "lever " + j,
                        "",
                        lowest,
                        lowest + (1 + random.nextInt(30)) * step,
                        step,
                        Widening.values()[random.nextInt(Widening.values().length)]));
            }
            Tramlines tramlines =
                    new Tramlines(6 + 42 * random.nextDouble(), DrivingPattern.values()[random.nextInt(2)]);
            int trays = 5 + random.nextInt(29);
            List<AdviceInput.DoneTest> tests = new ArrayList<>();
            int done = 1 + random.nextInt(5);
            for (int i = 0; i < done; i++) {
                tests.add(test(random, levers, tramlines, trays));
            }
            return new Case(new AdviceInput(
                    tests,
                    new LeverRules(levers, random.nextBoolean()),
                    MachineOrder.IN_ORDER,
                    tramlines,
                    WindLimits.USUAL));
        }

        /** Settings on the scale, or a little off its steps, or not typed. */
        private static AdviceInput.DoneTest test(Random random, List<Lever> levers, Tramlines tramlines, int trays) {
            Map<String, Double> settings = new LinkedHashMap<>();
            for (Lever lever : levers) {
                if (random.nextInt(10) > 0) {
                    double off = random.nextInt(4) == 0 ? 0.3 * lever.step() : 0;
                    double steps = Math.floor((lever.highest() - lever.lowest()) / lever.step() * random.nextDouble());
                    settings.put(lever.label(), Math.min(lever.highest(), lever.lowest() + steps * lever.step() + off));
                }
            }
            List<Double> places = TrayLayouts.even(tramlines.widthM(), trays, 0.25, tramlines.pattern())
                    .positionsM();
            double centre = 0.5 * random.nextGaussian();
            List<Double> grams = places.stream()
                    .map(x -> Math.max(
                            0.1,
                            12
                                    * (1
                                            + centre * Math.cos(2 * Math.PI * x / tramlines.widthM())
                                            + 0.05 * random.nextGaussian())))
                    .toList();
            return new AdviceInput.DoneTest(
                    UniformityCalculator.of(new TrayCatches(
                            places, grams, tramlines.widthM(), tramlines.pattern(), 0.25, 3, 0.028, 0.1)),
                    settings,
                    1.0);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void theAdviceCanBeFollowed(long seed) {
        Random random = new Random(seed);
        int moved = 0;
        for (int i = 0; i < 60; i++) {
            AdviceInput input = Case.draw(random).input();
            Advice advice = Advisor.advise(input);
            assertThat(advice.reasons()).isNotEmpty().contains(advice.decisive());
            moved += advice.moves().isEmpty() ? 0 : 1;
            assertThat(advice.moves().isEmpty()).isEqualTo(advice.kind() != AdviceKind.MOVE_LEVER);
            if (!advice.back()) {
                assertThat(advice.moves().size())
                        .isLessThanOrEqualTo(input.levers().twoAtOnce() ? 2 : 1);
            }
            for (LeverMove move : advice.moves()) {
                followed(input, move);
            }
            if (advice.kind() == AdviceKind.MOVE_LEVER && !advice.probe() && !advice.back()) {
                assertThat(advice.expected().percent())
                        .isLessThan(new TestsBySetting(input)
                                .pool(input.last())
                                .evenness()
                                .cvPercent());
                assertThat(advice.expectedField()).isNotNull();
            }
        }
        assertThat(moved).isGreaterThan(10);
    }

    /** From the setting of the last test, by whole steps unless back to an earlier test, within the end stops. */
    private static void followed(AdviceInput input, LeverMove move) {
        Lever lever = input.levers().levers().stream()
                .filter(each -> each.label().equals(move.lever()))
                .findFirst()
                .orElseThrow();
        assertThat(move.from()).isEqualTo(input.last().settings().get(move.lever()));
        assertThat(lever.reaches(move.to())).isTrue();
        assertThat(move.to()).isNotEqualTo(move.from());
        assertThat((move.to() - move.from()) / lever.step()).isCloseTo(move.steps(), within(0.5));
    }
}
