package org.evenfall.rate;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What all passes took together, over all fields.
 *
 * @param passes number of passes
 * @param spreadHa areas of all passes, ha; ground that was spread twice counts twice
 * @param productKg product, kg
 * @param nitrogenKg nitrogen of all passes whose product has a known nitrogen content, kg; null when none has
 */
public record SeasonUse(
        int passes,
        double spreadHa,
        double productKg,
        @Nullable Double nitrogenKg) {

    /** Adds them up; without a pass all is 0. */
    public static SeasonUse of(List<PassUse> passes) {
        return new SeasonUse(
                passes.size(),
                passes.stream().mapToDouble(PassUse::areaHa).sum(),
                passes.stream().mapToDouble(PassUse::productKg).sum(),
                FieldUse.nitrogenKg(passes));
    }
}
