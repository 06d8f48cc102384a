package org.evenfall.trays;

/**
 * What uneven spreading costs a cereal crop, for scale: a range, never a promise. The response to nitrogen is taken as a
 * parabola, so the loss grows with the square of the CV.
 *
 * <p>Source: lower end 20 kg of grain per hectare at a CV of 20 % (a review of the UK Fertiliser Society gives 20 to 50);
 * upper end 0.25 t/ha between a CV of 30 and one of 10 % (Irish press 2019), by the square 125 kg/ha at 20 %.
 *
 * @param lowKgPerHa lower end, kg of grain per hectare
 * @param highKgPerHa upper end, kg of grain per hectare
 */
public record CropLoss(double lowKgPerHa, double highKgPerHa) {

    private static final double AT_CV_PERCENT = 20;
    private static final double LOW_KG_PER_HA = 20;
    private static final double HIGH_KG_PER_HA = 250 / (30.0 * 30 - 10 * 10) * AT_CV_PERCENT * AT_CV_PERCENT;

    /**
     * The loss at a CV.
     *
     * @param cvPercent true CV, %, at least 0
     * @throws IllegalArgumentException for a negative CV
     */
    public static CropLoss of(double cvPercent) {
        if (!(cvPercent >= 0)) {
            throw new IllegalArgumentException("cvPercent must be at least 0: " + cvPercent);
        }
        double square = cvPercent * cvPercent / (AT_CV_PERCENT * AT_CV_PERCENT);
        return new CropLoss(LOW_KG_PER_HA * square, HIGH_KG_PER_HA * square);
    }
}
