package org.evenfall.setup;

import java.util.List;
import org.evenfall.rate.FieldUse;
import org.evenfall.rate.PassUse;
import org.evenfall.rate.SeasonUse;
import org.jspecify.annotations.Nullable;

/**
 * What was spread, as logged, against the plan of the season.
 *
 * @param passes every pass in which something is typed, in the order of the log
 * @param fields each field with at least one complete pass, in the order of the log
 * @param total all complete passes together
 * @param incomplete number of passes without area or product, which count nowhere
 */
public record SeasonLogResult(List<Pass> passes, List<Field> fields, SeasonUse total, int incomplete) {

    /** Copies the lists. */
    public SeasonLogResult {
        passes = List.copyOf(passes);
        fields = List.copyOf(fields);
    }

    /**
     * A pass.
     *
     * @param index its index in the log, from 0
     * @param date the day by ISO 8601, else as typed; may be empty
     * @param field the field as typed, else that of the setup; may be empty
     * @param areaHa area, ha; null while not known
     * @param productKg product drawn, kg; null while not known
     * @param amounts what follows from both; null while one is not known
     */
    public record Pass(
            int index,
            String date,
            String field,
            @Nullable Double areaHa,
            @Nullable Double productKg,
            @Nullable PassUse amounts) {}

    /**
     * A field.
     *
     * @param field its name as first typed; may be empty
     * @param amounts what it got
     * @param plan the season's plan for it; null while no pass is planned or no nitrogen content known
     */
    public record Field(
            String field, FieldUse amounts, @Nullable Plan plan) {}

    /**
     * The season's plan for a field.
     *
     * @param passes number of passes planned
     * @param nitrogenKgPerHa nitrogen planned in all, kg/ha
     * @param leftKgPerHa nitrogen still to be spread, kg/ha; negative: more was spread
     */
    public record Plan(int passes, double nitrogenKgPerHa, double leftKgPerHa) {}

    /** A name in the form in which names are compared: without capitals and needless blanks. */
    public static String plain(String name) {
        return ConditionRules.plain(name);
    }
}
