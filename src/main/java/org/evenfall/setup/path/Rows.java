package org.evenfall.setup.path;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.evenfall.setup.entry.Setup;

/**
 * A list of records, for example the levers of the machine or the tray tests.
 *
 * @param <R> the record it belongs to
 * @param <I> one item
 */
public final class Rows<R, I> extends Entry<R, List<I>> {

    private final I blank;
    private final Part<I> row;

    Rows(Part<R> part, Component<R, List<I>> component, I blank, Need need) {
        super(part, component, need);
        this.blank = blank;
        this.row = Part.of(patterns().stream().map(pattern -> pattern + "/*").toList(), this::items);
    }

    private Stream<EntryPath<I>> items(Setup setup) {
        return places(setup)
                .flatMap(list -> IntStream.range(0, list.get(setup).size()).mapToObj(i -> item(list, i)));
    }

    /** The same entry, needed for the card; the finding while the list is empty has this key. */
    public Rows<R, I> neededByAssessment() {
        return new Rows<>(part(), component(), blank, Need.BY_ASSESSMENT);
    }

    /** One item, as the record its entries belong to. */
    public Part<I> row() {
        return row;
    }

    /** An item in which nothing is typed. */
    public I blank() {
        return blank;
    }

    /** One item of the list that is at a place. */
    public EntryPath<I> item(EntryPath<List<I>> list, int index) {
        return EntryPath.item(list, index, blank);
    }

    /** One item, for a list that a setup has once. */
    public EntryPath<I> item(int index) {
        return item(path(), index);
    }

    @Override
    public boolean isBlank(List<I> value) {
        return value.isEmpty();
    }
}
