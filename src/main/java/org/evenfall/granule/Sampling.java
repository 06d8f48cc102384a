package org.evenfall.granule;

/** How many bags to take a sample from: about the root of their number, at least four. Common practice, no source. */
public final class Sampling {

    /** Fewest bags worth sampling. */
    public static final int FEWEST_BAGS = 4;

    private Sampling() {}

    /**
     * Bags to sample.
     *
     * @param delivered bags delivered, at least 1
     */
    public static int bags(int delivered) {
        if (delivered < 1) {
            throw new IllegalArgumentException("bags delivered must be at least 1: " + delivered);
        }
        return Math.min(delivered, Math.max(FEWEST_BAGS, (int) Math.ceil(Math.sqrt(delivered))));
    }
}
