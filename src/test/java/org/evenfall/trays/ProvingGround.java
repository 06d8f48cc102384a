package org.evenfall.trays;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.evenfall.flight.DrivingPattern;

/**
 * Whole test-and-adjust loops on virtual machines, by the advice and by the naive rule (one step each time in the diagnosed
 * direction) in the same run. Run its main method for the table.
 */
public final class ProvingGround {

    static final int MOST_TESTS = 20;
    static final int ADJUSTMENTS = 3;
    static final double GOOD = CvLimits.GOOD_PERCENT;

    private ProvingGround() {}

    /**
     * One loop.
     *
     * @param before true CV at the start, %
     * @param afterThree true CV after at most three adjustments
     * @param end true CV where it stopped
     * @param tests tests driven
     * @param adjustments settings changed
     */
    record Loop(double before, double afterThree, double end, int tests, int adjustments) {}

    interface Rule {
        /** The next settings; null to stop, the same to repeat. */
        Map<String, Double> next(MachineUnderTest machine, List<AdviceInput.DoneTest> tests, List<ShapeCurve> curves);
    }

    static List<MachineUnderTest> machines(int count, long seed, Function<Random, MachineUnderTest> maker) {
        Random random = new Random(seed);
        List<MachineUnderTest> machines = new ArrayList<>();
        while (machines.size() < count) {
            MachineUnderTest machine = maker.apply(random);
            // only where a good setting exists and the mis-setting matters
            if (machine.trueCv(machine.middle()) <= 8 && machine.trueCv(machine.start()) > GOOD) {
                machines.add(machine);
            }
        }
        return machines;
    }

    static Loop loop(MachineUnderTest machine, Rule rule, long seed) {
        List<AdviceInput.DoneTest> tests = new ArrayList<>();
        List<ShapeCurve> curves = machine.curves();
        Map<String, Double> now = machine.start();
        double before = machine.trueCv(now);
        double afterThree = before;
        int adjustments = 0;
        while (tests.size() < MOST_TESTS) {
            tests.add(new AdviceInput.DoneTest(
                    UniformityCalculator.of(machine.test(now, seed + tests.size())), now, 1.0));
            Map<String, Double> next = rule.next(machine, tests, curves);
            if (next == null) {
                break;
            }
            if (!next.equals(now)) {
                now = next;
                adjustments++;
                if (adjustments <= ADJUSTMENTS) {
                    afterThree = machine.trueCv(now);
                }
            }
        }
        return new Loop(before, afterThree, machine.trueCv(now), tests.size(), adjustments);
    }

    static Map<String, Double> advised(
            MachineUnderTest machine, List<AdviceInput.DoneTest> tests, List<ShapeCurve> curves) {
        Advice advice = Advisor.advise(
                new AdviceInput(
                        tests,
                        new LeverRules(machine.levers(), false),
                        new MachineOrder(true, true, true),
                        new Tramlines(machine.widthM(), DrivingPattern.BACK_AND_FORTH),
                        WindLimits.USUAL),
                () -> curves);
        Map<String, Double> now = tests.get(tests.size() - 1).settings();
        return switch (advice.kind()) {
            case MOVE_LEVER -> {
                Map<String, Double> next = new LinkedHashMap<>(now);
                advice.moves().forEach(move -> next.put(move.lever(), move.to()));
                yield next;
            }
            case REPEAT_TEST, OUTLETS_AND_VANES -> now;
            default -> null;
        };
    }

    static Map<String, Double> naive(
            MachineUnderTest machine, List<AdviceInput.DoneTest> tests, List<ShapeCurve> curves) {
        AdviceInput.DoneTest last = tests.get(tests.size() - 1);
        if (last.evenness().cvPercent() <= GOOD) {
            return null;
        }
        SpreadShape centre =
                last.evenness().shapes().shape(ShapeKind.CENTRE_OVERLAP).orElseThrow();
        Map<String, Double> next = new LinkedHashMap<>(last.settings());
        int step = machine.levers().get(0).widerSign() * (centre.amplitudePercent() > 0 ? 1 : -1);
        next.put(VirtualMachine.LONG, Math.max(0, Math.min(20, next.get(VirtualMachine.LONG) + step)));
        return next;
    }

    static List<Loop> run(List<MachineUnderTest> machines, Rule rule) {
        return IntStream.range(0, machines.size())
                .parallel()
                .mapToObj(i -> loop(machines.get(i), rule, 1000L * i))
                .toList();
    }

    static double goodShare(List<Loop> loops) {
        return loops.stream().filter(loop -> loop.afterThree() <= GOOD).count() / (double) loops.size();
    }

    static double medianTests(List<Loop> loops) {
        return loops.stream()
                .mapToInt(Loop::tests)
                .sorted()
                .skip(loops.size() / 2)
                .findFirst()
                .orElse(0);
    }

    static double meanTests(List<Loop> loops) {
        return loops.stream().mapToInt(Loop::tests).average().orElse(0);
    }

    static long worse(List<Loop> loops) {
        return loops.stream().filter(loop -> loop.end() > loop.before() + 0.5).count();
    }

    public static void main(String[] args) {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 500;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 20270318;
        table("landing model", machines(count, seed, VirtualMachine::new));
        for (double usual : new double[] {2.5, 4, 6}) {
            table("cosines, " + usual + " % a step", machines(count, seed, random -> new CosineMachine(random, usual)));
        }
    }

    private static void table(String kind, List<MachineUnderTest> machines) {
        System.out.printf(
                Locale.ROOT,
                "%d virtual machines (%s) that can do 8 %%, mis-set by up to 6 steps, CV above 10 at the start%n%-8s %18s %16s %10s %10s %12s %12s %8s%n",
                machines.size(),
                kind,
                "rule",
                "CV<=10 after <=3",
                "CV<=10 at end",
                "tests med",
                "mean",
                "worst end",
                "95 % end",
                "worse");
        for (String name : List.of("advice", "naive")) {
            List<Loop> loops = run(machines, name.equals("advice") ? ProvingGround::advised : ProvingGround::naive);
            double[] ends = loops.stream().mapToDouble(Loop::end).sorted().toArray();
            System.out.printf(
                    Locale.ROOT,
                    "%-8s %17.1f%% %15.1f%% %10.0f %10.2f %12.1f %12.1f %8d%n",
                    name,
                    100 * goodShare(loops),
                    100.0 * loops.stream().filter(loop -> loop.end() <= GOOD).count() / machines.size(),
                    medianTests(loops),
                    meanTests(loops),
                    ends[ends.length - 1],
                    ends[(int) (0.95 * ends.length)],
                    worse(loops));
        }
    }
}
