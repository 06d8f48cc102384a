package org.evenfall.trays;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.ThrowConditions;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;

/**
 * A machine of another kind, which shares nothing with the landing model: its field is a sum of cosines, the centre shape
 * changes by so many percent a step (slope × 0.4 to 2, curvature), and each lever has an effect of its own on the quarter
 * points. Seeded.
 */
final class CosineMachine implements MachineUnderTest {

    private static final double MIDDLE = 10;

    private final double widthM;
    private final SizeDistribution sizes;
    private final double densityKgPerM3;
    private final double rateKgPerHa;
    private final double slopePercent;
    private final double bend;
    private final double quarterPercent;
    private final double quarterSlopePercent;
    private final double sidePercent;
    private final boolean up;
    private final double start;

    /** @param usualPercent what a step usually takes from the centre, % of the mean */
    CosineMachine(Random random, double usualPercent) {
        widthM = new double[] {18, 21, 24, 28, 30, 32, 36}[random.nextInt(7)];
        sizes = new SizeDistribution(2.8 + random.nextDouble(), 1.15 + 0.15 * random.nextDouble(), 0.03, 0.05, false);
        densityKgPerM3 = 1250 + 150 * random.nextDouble();
        rateKgPerHa = 90 + 160 * random.nextDouble();
        slopePercent = usualPercent * (0.4 + 1.6 * random.nextDouble());
        bend = 0.04 * (2 * random.nextDouble() - 1);
        quarterPercent = 6 * (2 * random.nextDouble() - 1);
        quarterSlopePercent = 0.8 * random.nextGaussian();
        sidePercent = 2 * random.nextGaussian();
        up = random.nextBoolean();
        start = MIDDLE + random.nextInt(13) - 6;
    }

    @Override
    public List<Double> truth(Map<String, Double> settings) {
        double steps = (settings.get(VirtualMachine.LONG) - MIDDLE) * (up ? 1 : -1);
        double centre = -slopePercent * steps * (1 + bend * steps);
        double quarter = quarterPercent + quarterSlopePercent * steps;
        List<Double> at = TrayLayouts.of(widthM, 7, TRAY_M2, DrivingPattern.BACK_AND_FORTH)
                .positionsM();
        return IntStream.range(0, 7)
                .mapToObj(i -> {
                    double turn = Math.PI * at.get(i) / widthM;
                    return Math.max(
                            0.05,
                            1
                                    + centre / 100 * Math.cos(2 * turn)
                                    + quarter / 100 * Math.cos(4 * turn)
                                    + sidePercent / 100 * Math.sin(turn));
                })
                .toList();
    }

    @Override
    public List<ShapeCurve> curves() {
        return ShapeCurves.of(new ThrowConditions(sizes, densityKgPerM3, 32, 0.75), widthM);
    }

    @Override
    public Map<String, Double> middle() {
        return Map.of(VirtualMachine.LONG, MIDDLE);
    }

    @Override
    public Map<String, Double> start() {
        return Map.of(VirtualMachine.LONG, start);
    }

    @Override
    public List<Lever> levers() {
        return List.of(new Lever(VirtualMachine.LONG, "", 0, 20, 1, up ? Widening.HIGHER : Widening.LOWER));
    }

    @Override
    public double widthM() {
        return widthM;
    }

    @Override
    public SizeDistribution sizes() {
        return sizes;
    }

    @Override
    public double densityKgPerM3() {
        return densityKgPerM3;
    }

    @Override
    public double rateKgPerHa() {
        return rateKgPerHa;
    }
}
