package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import org.evenfall.quantity.Typed;
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
        Typed nitrogenRate,
        UnitsBasis unitsBasis,
        Typed productRate,
        Typed speed,
        Typed area,
        Typed bagMass,
        Typed hopperVolume,
        Typed bucketVolume,
        Typed price,
        Typed otherPrice,
        Typed otherNitrogen,
        Typed effectiveness,
        Typed tolerance)
        implements PlanEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final PlanEntries EMPTY = new PlanEntries(
            RateBasis.UNANSWERED,
            Typed.EMPTY,
            UnitsBasis.UNANSWERED,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY);

    public PlanEntries {
        basis = Objects.requireNonNullElse(basis, RateBasis.UNANSWERED);
        nitrogenRate = Typed.orEmpty(nitrogenRate);
        unitsBasis = Objects.requireNonNullElse(unitsBasis, UnitsBasis.UNANSWERED);
        productRate = Typed.orEmpty(productRate);
        speed = Typed.orEmpty(speed);
        area = Typed.orEmpty(area);
        bagMass = Typed.orEmpty(bagMass);
        hopperVolume = Typed.orEmpty(hopperVolume);
        bucketVolume = Typed.orEmpty(bucketVolume);
        price = Typed.orEmpty(price);
        otherPrice = Typed.orEmpty(otherPrice);
        otherNitrogen = Typed.orEmpty(otherNitrogen);
        effectiveness = Typed.orEmpty(effectiveness);
        tolerance = Typed.orEmpty(tolerance);
    }
}
