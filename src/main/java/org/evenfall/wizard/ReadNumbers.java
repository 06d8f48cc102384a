package org.evenfall.wizard;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.evenfall.setup.ReadSetup;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.QuantityList;
import org.jspecify.annotations.Nullable;

/**
 * Numbers of a setup as they were read, in core units.
 *
 * @param read the setup
 */
record ReadNumbers(ReadSetup read) {

    /** The number of an entry; null while it is not typed or cannot be used. */
    @Nullable
    Double of(Quantity<?> entry) {
        return read.numbers().get(entry.pointer());
    }

    /** The same of an entry in one of several rows. */
    @Nullable
    <R> Double of(Quantity<R> entry, EntryPath<R> row) {
        return read.numbers().get(entry.at(row).pointer());
    }

    /** The same as a whole number. */
    @Nullable
    Integer count(Quantity<?> entry) {
        Double number = of(entry);
        return number == null ? null : Integer.valueOf((int) Math.round(number));
    }

    /** All numbers of a list that can be used. */
    List<Double> of(QuantityList<?> list) {
        return IntStream.range(0, list.get(read.setup()).size())
                .mapToObj(i ->
                        read.numbers().get(QuantityList.item(list.path(), i).pointer()))
                .filter(Objects::nonNull)
                .toList();
    }

    /** The first numbers of a list of the record that is at a place; null for each that cannot be used. */
    <R> List<@Nullable Double> firstOf(QuantityList<R> list, EntryPath<R> row, int count) {
        return IntStream.range(0, count)
                .<@Nullable Double>mapToObj(i ->
                        read.numbers().get(QuantityList.item(list.at(row), i).pointer()))
                .toList();
    }
}
