package org.evenfall.granule;

/**
 * Share of a poured heap that its granules fill: bulk over granule density.
 *
 * @param share the share, above 0, at most {@link #RANDOM_CLOSE}
 * @param standardError its standard error between products, at least 0
 */
public record Packing(double share, double standardError) {

    /** Random close packing of equal spheres, the upper bound of a poured heap. Source: Berryman 1983. */
    public static final double RANDOM_CLOSE = 0.64;

    /**
     * Urea, granular or prilled. Assumption: poured near-round granules; 0.75 kg/L of granules of 1 260 kg/m³ (Source:
     * UNIDO/IFDC Fertilizer Manual, second hand) makes 0.595.
     */
    private static final Packing UREA = new Packing(0.59, 0.03);

    /** Every other product. Assumption: less round and less even than urea. */
    private static final Packing ELSE = new Packing(0.56, 0.04);

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException unless share is above 0 and at most 0.64, standardError at least 0
     */
    public Packing {
        if (!(share > 0 && share <= RANDOM_CLOSE) || !(standardError >= 0)) {
            throw new IllegalArgumentException("share must be above 0 and at most " + RANDOM_CLOSE
                    + ", standardError at least 0: " + share + ", " + standardError);
        }
    }

    /** The packing assumed for a form. */
    public static Packing of(ProductForm form) {
        return form.isUrea() ? UREA : ELSE;
    }

    /** Standard error as a part of the share. */
    public double relativeError() {
        return standardError / share;
    }
}
