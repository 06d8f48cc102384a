package org.evenfall.setup.tool;

import org.evenfall.flight.Air;
import org.evenfall.flight.Flight;
import org.evenfall.flight.Granule;
import org.evenfall.flight.Landing;
import org.evenfall.flight.Launch;
import org.evenfall.flight.SphereDrag;
import org.evenfall.flight.Vane;
import org.evenfall.flight.VaneOutlet;
import org.jspecify.annotations.Nullable;

/** The flight of one granule, how it leaves a vane, and the drag of a sphere: the models by themselves. */
public final class FlightTool {

    /** Standard gravity, m/s². */
    public static final double GRAVITY_M_PER_S2 = Flight.GRAVITY_M_PER_S2;

    private FlightTool() {}

    /**
     * What acts on a granule in flight.
     *
     * @param windAlongMPerS wind with the throw, m/s
     * @param windAcrossMPerS wind to the right of the throw, m/s
     * @param gravityMPerS2 gravity, above 0
     */
    public record Conditions(double windAlongMPerS, double windAcrossMPerS, double gravityMPerS2) {}

    /** Flight of a sphere in standard air. */
    public static Landing fly(Granule granule, Launch launch, Conditions conditions) {
        return Flight.fly(
                granule,
                launch,
                conditions.windAlongMPerS(),
                conditions.windAcrossMPerS(),
                conditions.gravityMPerS2(),
                Air.STANDARD);
    }

    /** Flight with a constant drag over the square of the speed, 1/m; 0 is a flight in vacuum. */
    public static Landing flyWithConstantDrag(double dragPerM, Launch launch, Conditions conditions) {
        return Flight.fly(
                speed -> dragPerM,
                launch,
                conditions.windAlongMPerS(),
                conditions.windAcrossMPerS(),
                conditions.gravityMPerS2());
    }

    /** How a granule leaves a vane; null when at this disc speed it stays where it falls. */
    public static @Nullable VaneOutlet leaveVane(Vane vane, double discRpm, double gravityMPerS2) {
        return vane.moves(discRpm, gravityMPerS2) ? vane.outlet(discRpm, gravityMPerS2) : null;
    }

    /** Drag coefficient of a smooth sphere at a Reynolds number. */
    public static double dragCoefficient(double reynolds) {
        return SphereDrag.coefficient(reynolds);
    }
}
