package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.rate.NitrogenEfficiency;
import org.evenfall.rate.UnitsBasis;

/**
 * Step 5, plan: rate, speed and area.
 *
 * @param basis whether the rate is given as nitrogen or as product
 * @param nitrogenRate nitrogen rate wanted, kg/ha, lb/ac or units/ac
 * @param unitsBasis meaning of one unit, where the rate is in units
 * @param nitrogenSplits nitrogen of each pass of the season, in order, kg/ha, lb/ac or units/ac; may be empty
 * @param productRate product rate wanted, kg/ha or lb/ac
 * @param speed forward speed, km/h, m/s or mph
 * @param area area, ha or ac
 * @param bagMass mass of a bag, kg, lb or t
 * @param hopperVolume volume of the hopper, L or m³
 * @param bucketVolume volume of the largest bucket, L
 * @param price price of the product, per tonne
 * @param otherPrice price of the product used before, per tonne
 * @param otherNitrogen nitrogen content of the product used before, %
 * @param otherDensity bulk density of the product used before, kg/L or kg/m³
 * @param nitrogenEfficiency share of the nitrogen of untreated urea that counts in the comparison of prices, by its source
 * @param effectiveness nitrogen that counts as effective in the comparison of prices, % of the nitrogen spread
 * @param tolerance allowed deviation of the rate, %
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record PlanEntries(
        RateBasis basis,
        EnteredQuantity nitrogenRate,
        UnitsBasis unitsBasis,
        List<EnteredQuantity> nitrogenSplits,
        EnteredQuantity productRate,
        EnteredQuantity speed,
        EnteredQuantity area,
        EnteredQuantity bagMass,
        EnteredQuantity hopperVolume,
        EnteredQuantity bucketVolume,
        EnteredQuantity price,
        EnteredQuantity otherPrice,
        EnteredQuantity otherNitrogen,
        EnteredQuantity otherDensity,
        NitrogenEfficiency nitrogenEfficiency,
        EnteredQuantity effectiveness,
        EnteredQuantity tolerance,
        UnknownKeys unknownKeys)
        implements PlanEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final PlanEntries EMPTY = Blank.of(PlanEntries.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public PlanEntries {
        nitrogenSplits = List.copyOf(nitrogenSplits);
    }
}
