package org.evenfall.rate;

/**
 * Share of the nitrogen of untreated urea that counts when prices are compared. The sources disagree. It never raises the
 * rate: the rate follows the total nitrogen.
 */
public enum NitrogenEfficiency {
    /** Not yet answered: all of it counts. */
    UNANSWERED(100),

    /** All of it counts. */
    COUNT_ALL(100),

    /** Source: Sylvester-Bradley et al. 2012 and 2014, winter wheat, against ammonium nitrate. */
    WHEAT_090(90),

    /** Source: Chambers and Dampney 2009, winter wheat: some 20 % more nitrogen for the same yield, 1 / 1.2 = 0.83. */
    WHEAT_083(83),

    /** Source: Murray et al. 2023, grazed grass; a ratio of yields. */
    GRASS_097(97.1);

    private final double percent;

    NitrogenEfficiency(double percent) {
        this.percent = percent;
    }

    /** The share, %. */
    public double percent() {
        return percent;
    }
}
