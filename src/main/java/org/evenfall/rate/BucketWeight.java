package org.evenfall.rate;

/** What may be caught in one bucket. */
public final class BucketWeight {

    /** Most a person carries in one bucket, net, kg. Assumption: room below the 25 kg usual as a limit for lifting by hand. */
    public static final double HEAVIEST_KG = 20;

    /** More was no bucket but a bag on a loader, kg. Assumption: nobody carries as much. */
    public static final double CARRIED_BY_HAND_KG = 60;

    /** Rounding that does not count against the limit, kg: a weight less the empty bucket. */
    private static final double ROUNDING_KG = 1e-9;

    private BucketWeight() {}

    /** Whether a net weight is too heavy to be carried, and may have been. */
    public static boolean tooHeavy(double kg) {
        return kg > HEAVIEST_KG + ROUNDING_KG && kg <= CARRIED_BY_HAND_KG;
    }
}
