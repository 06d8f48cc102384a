package org.evenfall.trays.proof;

import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.trays.FieldCv;
import org.evenfall.trays.Tramlines;

/**
 * A virtual machine on a field: a pattern of a family, overlapped, scaled to a wanted variation, and a tray test on it.
 *
 * @param seed repeats the granules
 */
record ProofMachine(Field field, Tramlines tramlines, TrayReading test, long seed) {

    private static final double[] WIDTHS_M = {12, 15, 16, 18, 20, 21, 24, 27, 28, 30, 32, 36, 40, 42, 48};

    /** Lower ends of the bands of true field CV, %, and the end of the last. */
    static final double[] BANDS_PERCENT = {2, 5, 10, 15, 20, 35};

    /** A pattern whose differences would have to be changed more than this has another shape: it is drawn again. */
    private static final double LEAST_FACTOR = 0.2;

    private static final double MOST_FACTOR = 2.5;

    /** A machine with a true field CV in a band; the same seed gives the same machine. */
    static ProofMachine draw(PatternFamily family, int band, long seed) {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
        double wanted = random.nextDouble(BANDS_PERCENT[band], BANDS_PERCENT[band + 1]);
        while (true) {
            Tramlines tramlines = new Tramlines(
                    WIDTHS_M[random.nextInt(WIDTHS_M.length)],
                    random.nextBoolean() ? DrivingPattern.BACK_AND_FORTH : DrivingPattern.ROUND_AND_ROUND);
            Field field = Field.of(family.draw(random, tramlines.widthM()), tramlines);
            double factor = wanted / field.cvPercent();
            Field scaled = field.times(factor);
            if (factor >= LEAST_FACTOR && factor <= MOST_FACTOR && scaled.smallest() >= 0) {
                return new ProofMachine(scaled, tramlines, TrayReading.draw(random), seed);
            }
        }
    }

    /** True variation, %. */
    double truePercent() {
        return field.cvPercent();
    }

    /** What trays at these places lead to. */
    FieldCv estimate(TrayPlaces places) {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(31 * seed + places.ordinal());
        List<Double> placesM = places.placesM(tramlines.widthM());
        List<Double> catchesG = placesM.stream()
                .map(x -> test.catchG(random, field.overTray(x, TrayReading.ACROSS_M)))
                .toList();
        return FieldCv.of(placesM, catchesG, tramlines, test.noisePercent(catchesG));
    }
}
