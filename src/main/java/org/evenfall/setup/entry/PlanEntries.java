package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.rate.UnitsBasis;

/**
 * Step 5, plan: how much, how fast, on what.
 *
 * @param basis how the rate was given
 * @param nitrogenRate nitrogen wanted, kg/ha, lb/ac or units/ac
 * @param unitsBasis what a unit means, where units were typed
 * @param productRate product rate, kg/ha or lb/ac
 * @param speed forward speed, km/h, m/s or mph
 * @param area area, ha or ac
 * @param bagMass mass of a bag, kg
 * @param hopperVolume hopper volume, L or m³
 * @param bucketVolume the largest bucket, L
 * @param price price per tonne
 * @param otherPrice price per tonne of the product used before
 * @param otherNitrogen nitrogen share of the product used before, %
 * @param effectiveness share of the nitrogen counted on, %, where the person wants one
 * @param tolerance allowed deviation of the rate, %
 */
@RecordBuilder
public record PlanEntries(
        RateBasis basis,
        EnteredQuantity nitrogenRate,
        UnitsBasis unitsBasis,
        EnteredQuantity productRate,
        EnteredQuantity speed,
        EnteredQuantity area,
        EnteredQuantity bagMass,
        EnteredQuantity hopperVolume,
        EnteredQuantity bucketVolume,
        EnteredQuantity price,
        EnteredQuantity otherPrice,
        EnteredQuantity otherNitrogen,
        EnteredQuantity effectiveness,
        EnteredQuantity tolerance)
        implements PlanEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final PlanEntries EMPTY = new PlanEntries(
            RateBasis.UNANSWERED,
            EnteredQuantity.EMPTY,
            UnitsBasis.UNANSWERED,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY);

    public PlanEntries {
        basis = Objects.requireNonNullElse(basis, RateBasis.UNANSWERED);
        nitrogenRate = EnteredQuantity.orEmpty(nitrogenRate);
        unitsBasis = Objects.requireNonNullElse(unitsBasis, UnitsBasis.UNANSWERED);
        productRate = EnteredQuantity.orEmpty(productRate);
        speed = EnteredQuantity.orEmpty(speed);
        area = EnteredQuantity.orEmpty(area);
        bagMass = EnteredQuantity.orEmpty(bagMass);
        hopperVolume = EnteredQuantity.orEmpty(hopperVolume);
        bucketVolume = EnteredQuantity.orEmpty(bucketVolume);
        price = EnteredQuantity.orEmpty(price);
        otherPrice = EnteredQuantity.orEmpty(otherPrice);
        otherNitrogen = EnteredQuantity.orEmpty(otherNitrogen);
        effectiveness = EnteredQuantity.orEmpty(effectiveness);
        tolerance = EnteredQuantity.orEmpty(tolerance);
    }
}
