package org.evenfall.rate;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a field got in all its passes.
 *
 * @param passes number of passes
 * @param areaHa area of the field, ha: the largest that was spread in one pass
 * @param productKg product of all passes, kg
 * @param nitrogenKg nitrogen of all passes whose product has a known nitrogen content, kg; null when none has
 * @param nitrogenKgPerHa that nitrogen on the area of the field, kg/ha; null when none is known
 */
public record FieldUse(
        int passes,
        double areaHa,
        double productKg,
        @Nullable Double nitrogenKg,
        @Nullable Double nitrogenKgPerHa) {

    /**
     * Adds up the passes over one field. Assumption: its area is the largest that was spread in one pass, so that a pass
     * over a part of it counts by its share.
     *
     * @throws IllegalArgumentException without a pass
     */
    public static FieldUse of(List<PassUse> passes) {
        double areaHa = passes.stream()
                .mapToDouble(PassUse::areaHa)
                .max()
                .orElseThrow(() -> new IllegalArgumentException("passes must not be empty"));
        Double nitrogenKg = nitrogenKg(passes);
        return new FieldUse(
                passes.size(),
                areaHa,
                passes.stream().mapToDouble(PassUse::productKg).sum(),
                nitrogenKg,
                nitrogenKg == null ? null : Double.valueOf(nitrogenKg / areaHa));
    }

    static @Nullable Double nitrogenKg(List<PassUse> passes) {
        List<Double> known = passes.stream()
                .map(PassUse::nitrogenKg)
                .filter(Objects::nonNull)
                .toList();
        return known.isEmpty()
                ? null
                : Double.valueOf(known.stream().mapToDouble(Double::doubleValue).sum());
    }
}
