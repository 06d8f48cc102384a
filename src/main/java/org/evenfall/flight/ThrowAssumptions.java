package org.evenfall.flight;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * What the throw model assumes of the machine and the granules, since nobody measures it. The same holds for every product
 * on one machine, so that it cancels largely in a ratio of throws, but not in a difference in metres.
 *
 * @param takeOffDeg angle above the horizontal at which granules leave, degrees
 * @param friction coefficient of friction on the vane, 0 to 1.5
 * @param dragFactor drag of a granule over that of a smooth sphere, 0.5 to 5
 */
public record ThrowAssumptions(double takeOffDeg, double friction, double dragFactor) {

    /** The assumptions of every single figure. */
    public static final ThrowAssumptions USUAL = new ThrowAssumptions(ThrowModel.TAKE_OFF_DEG, ThrowModel.FRICTION, 1);

    /** Source: published discs, flat ones 0°, cones more; Villette et al. 2008, Yildirim 2006. Assumption: alike likely. */
    private static final double[] TAKE_OFFS_DEG = {0, 5, 10};

    /**
     * Source: equivalent friction 0.13 of ammonium nitrate and 0.14 of NPK, 0.44 of potassium chloride, Villette et al.
     * 2010. Assumption: urea, for which none is published, lies between 0.10 and 0.30.
     */
    private static final double[] FRICTIONS = {0.10, 0.30};

    /**
     * Assumption: from a smooth sphere to a granule that drags 20 % more; the measured fall of urea and of calcium ammonium
     * nitrate asks for about 14 % (Source: Hůla, Kroulík, Honzík 2017), no drag of urea granules is published.
     */
    private static final double[] DRAG_FACTORS = {1.0, 1.2};

    /** Computed once, as every flight asks for it: {@link #speedShare()} of the frictions of the range and of the usual one. */
    private static final Map<Double, Double> SPEED_SHARES = Stream.concat(
                    Stream.of(ThrowModel.FRICTION), DoubleStream.of(FRICTIONS).boxed())
            .collect(Collectors.toUnmodifiableMap(Function.identity(), ThrowAssumptions::speedShare));

    /** The range of the model: every combination, each taken as equally likely. */
    public static final List<ThrowAssumptions> RANGE = DoubleStream.of(TAKE_OFFS_DEG)
            .boxed()
            .flatMap(takeOff -> DoubleStream.of(FRICTIONS)
                    .boxed()
                    .flatMap(friction -> DoubleStream.of(DRAG_FACTORS)
                            .mapToObj(drag -> new ThrowAssumptions(takeOff, friction, drag))))
            .toList();

    /**
     * Speed at the vane tip over that with the usual friction. It hardly depends on the disc, as the granule's weight is
     * small against the centrifugal force.
     */
    double speedShare() {
        Double known = SPEED_SHARES.get(friction);
        return known == null ? speedShare(friction) : known;
    }

    private static double speedShare(double friction) {
        return outletSpeed(friction) / outletSpeed(ThrowModel.FRICTION);
    }

    private static double outletSpeed(double friction) {
        double radiusM = ThrowModel.USUAL_DISC_RADIUS_M;
        return new Vane(radiusM, ThrowModel.DROP_SHARE * radiusM, 0, friction)
                .outlet(ThrowModel.USUAL_DISC_RPM, Flight.GRAVITY_M_PER_S2)
                .speedMPerS();
    }
}
