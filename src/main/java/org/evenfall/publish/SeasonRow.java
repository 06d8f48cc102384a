package org.evenfall.publish;

import java.util.List;
import java.util.Objects;
import org.evenfall.rate.PassUse;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.SeasonLogResult.Pass;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.YesNo;
import org.jspecify.annotations.Nullable;

/**
 * One pass in the record of a season; a text that is not known is empty, a figure null.
 *
 * @param date the day by ISO 8601, else as typed
 * @param farm farm
 * @param field field or block
 * @param crop crop
 * @param product what it was spread with
 * @param machine machine
 * @param areaHa area spread, ha
 * @param productKg product drawn, kg
 * @param amounts what follows from both
 * @param revision revision of the card, 0 without one
 */
record SeasonRow(
        String date,
        String farm,
        String field,
        String crop,
        Product product,
        String machine,
        @Nullable Double areaHa,
        @Nullable Double productKg,
        @Nullable PassUse amounts,
        int revision) {

    /**
     * A product.
     *
     * @param name its name
     * @param nitrogenPercent nitrogen content, %
     * @param treated whether it is treated with a urease inhibitor
     * @param inhibitor name of the inhibitor
     */
    record Product(String name, @Nullable Double nitrogenPercent, YesNo treated, String inhibitor) {}

    /** A pass of a setup. */
    static SeasonRow of(Setup setup, Assessment assessment, Pass pass) {
        return new SeasonRow(
                pass.date(),
                setup.start().farm().strip(),
                pass.field(),
                setup.start().crop().strip(),
                new Product(
                        setup.product().name().strip(),
                        assessment.product().nitrogenPercent(),
                        setup.product().treated(),
                        setup.product().inhibitor().strip()),
                setup.machine().name().strip(),
                pass.areaHa(),
                pass.productKg(),
                pass.amounts(),
                setup.card().revision());
    }

    /** Whether all is there that a record of the nutrients needs: day, farm, field, crop, product and all figures. */
    boolean complete() {
        return List.of(date, farm, field, crop, product.name()).stream().noneMatch(String::isEmpty)
                && amounts != null
                && amounts.nitrogenKg() != null;
    }

    /** The kilograms of nitrogen on one hectare. */
    @Nullable
    Double nitrogenKgPerHa() {
        return amounts == null ? null : amounts.nitrogenKgPerHa();
    }

    /** The kilograms of nitrogen in all. */
    @Nullable
    Double nitrogenKg() {
        return amounts == null ? null : amounts.nitrogenKg();
    }

    /** The kilograms of product on one hectare. */
    @Nullable
    Double productKgPerHa() {
        return amounts == null ? null : Double.valueOf(amounts.productKgPerHa());
    }

    /** The amounts of those rows that have any. */
    static List<PassUse> amounts(List<SeasonRow> rows) {
        return rows.stream().map(SeasonRow::amounts).filter(Objects::nonNull).toList();
    }
}
