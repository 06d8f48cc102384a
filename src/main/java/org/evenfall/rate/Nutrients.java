package org.evenfall.rate;

import org.evenfall.quantity.Unit;

/** Nitrogen, product, money and the ambiguous fertiliser "unit". Exact arithmetic. */
public final class Nutrients {

    /** One hundredth of a hundredweight (1.12 lb) per acre in kg/ha: 1.255 35, exact from pound and acre. */
    public static final double HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE_KG_PER_HA = Unit.LB_PER_AC.to(Unit.KG_PER_HA, 1.12);

    private Nutrients() {}

    /**
     * What one "unit" means in kg/ha.
     *
     * @throws IllegalArgumentException while the basis is not answered
     */
    public static double unitKgPerHa(UnitsBasis basis) {
        return switch (basis) {
            case KG_PER_HA -> 1;
            case HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE -> HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE_KG_PER_HA;
            case UNANSWERED -> throw new IllegalArgumentException("the basis of a unit must be asked");
        };
    }

    /** Product for a rate of nitrogen, kg/ha; nitrogen share in %, above 0. */
    public static double productKgPerHa(double nitrogenKgPerHa, double nitrogenPercent) {
        return nitrogenKgPerHa * 100 / share(nitrogenPercent);
    }

    /** Nitrogen in a rate of product, kg/ha; nitrogen share in %, above 0. */
    public static double nitrogenKgPerHa(double productKgPerHa, double nitrogenPercent) {
        return productKgPerHa * share(nitrogenPercent) / 100;
    }

    /** Price of one kg of nitrogen that counts; effectiveness in %, 100 when nothing is deducted. */
    public static double costPerKgN(double pricePerT, double nitrogenPercent, double effectivenessPercent) {
        return pricePerT / (10 * share(nitrogenPercent)) * 100 / share(effectivenessPercent);
    }

    /** Price per tonne at which a product costs the same per kg of nitrogen as another. */
    public static double parityPricePerT(double otherPricePerT, double otherNitrogenPercent, double nitrogenPercent) {
        return otherPricePerT * share(nitrogenPercent) / share(otherNitrogenPercent);
    }

    private static double share(double percent) {
        if (!(percent > 0)) {
            throw new IllegalArgumentException("share must be above 0 %: " + percent);
        }
        return percent;
    }
}
