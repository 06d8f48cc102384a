package org.evenfall.granule;

/** How many bags to sample. Common practice: about the square root of their number, at least four. */
public final class Sampling {

    /** Fewest bags to sample where so many were delivered. */
    public static final int FEWEST_BAGS = 4;

    private Sampling() {}

    /**
     * Bags to sample: √delivered rounded up, at least {@link #FEWEST_BAGS}, at most all.
     *
     * @param delivered bags delivered, at least 1
     * @throws IllegalArgumentException when delivered is below 1
     */
    public static int bags(int delivered) {
        if (delivered < 1) {
            throw new IllegalArgumentException("bags delivered must be at least 1: " + delivered);
        }
        return Math.min(delivered, Math.max(FEWEST_BAGS, (int) Math.ceil(Math.sqrt(delivered))));
    }
}
