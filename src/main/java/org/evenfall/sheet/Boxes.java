package org.evenfall.sheet;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.NumberWriter;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.Text;
import org.evenfall.sheet.SheetContent.Box;
import org.evenfall.sheet.SheetContent.Entries;
import org.evenfall.sheet.SheetContent.Heading;
import org.evenfall.sheet.SheetContent.Row;

/**
 * Makes the boxes of one prompt, with the labels and units that its entries have on the screen.
 *
 * @param id id of the prompt
 */
record Boxes(Setup setup, Sentences words, String id) {

    /** More boxes than any line holds. */
    static final int AS_MANY_AS_FIT = 99;

    /** Writes numbers as the person would type them. */
    static NumberWriter numbers(Sentences words) {
        return (value, decimals) -> NumberFormats.decimals(value, decimals, words.locale());
    }

    /** A box for an entry, blank. */
    Box blank(Quantity<?> entry) {
        return filled(entry, EnteredQuantity.EMPTY);
    }

    /** A box for an entry with what is known already. */
    Box filled(Quantity<?> entry, EnteredQuantity known) {
        return named(words.text(entry.labelKey(setup)), entry.units(setup), known);
    }

    /** A box under a name of its own; its unit is the one that was typed already, else the usual one. */
    Box named(String label, List<Unit> units, EnteredQuantity known) {
        EnteredQuantity split = known.withUnitFromText();
        Unit unit = split.isBlank() || split.unit() == Unit.NONE ? units.get(0) : split.unit();
        return new Box(id, label, words.unit(unit), skippable(), split.text().strip(), "", false);
    }

    /** A blank box for an entry, with what is set now next to it. */
    Box set(Quantity<?> entry, EnteredQuantity known) {
        return set(words.text(entry.labelKey(setup)), entry.units(setup), known);
    }

    /** A blank box under a name of its own, with what is set now next to it. */
    Box set(String label, List<Unit> units, EnteredQuantity known) {
        Box box = named(label, units, EnteredQuantity.EMPTY);
        return known.isBlank() ? box : box.withSet(words.typed(known));
    }

    /** A blank box with a unit in words; empty for none. */
    Box blank(String label, String unit) {
        return new Box(id, label, unit, skippable(), "", "", false);
    }

    /** Blank boxes for a list of values, numbered from 1. */
    List<Box> numbered(QuantityList<?> entry, int count) {
        List<Box> boxes = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            boxes.add(blank(numberedLabel(words.text(entry.labelKey()), i), unit(entry)));
        }
        return boxes;
    }

    /** A box for words. */
    Box text(Text<?> entry, String known) {
        return new Box(id, words.text(entry.labelKey()), "", skippable(), known.strip(), "", true);
    }

    String numberedLabel(String label, int number) {
        return words.text("sheet.numbered", Arg.text(label), Arg.count(number));
    }

    String unit(QuantityList<?> entry) {
        return words.unit(entry.units(setup).get(0));
    }

    /** Whether one can go on without this prompt. */
    private boolean skippable() {
        return words.has("prompt." + id + ".without");
    }

    /** The same box, grey: the person can go on without it. */
    static Box grey(Box box) {
        return new Box(box.promptId(), box.label(), box.unit(), true, box.value(), box.set(), box.wide());
    }

    /** The heading of the prompt with a sentence on how to measure. */
    Heading heading() {
        String help = "prompt." + id + ".help";
        return heading(
                words.text("prompt." + id + ".name"),
                List.of(words.text(words.has(help) ? help : "prompt." + id + ".how")));
    }

    Heading heading(String name, List<String> notes) {
        return new Heading(id, name, notes, words.text("sheet.typedIn"));
    }

    /** All boxes in one row. */
    Entries row(Box... boxes) {
        return rows(List.of(new Row("", 0, List.of(boxes))));
    }

    Entries rows(List<Row> rows) {
        return new Entries(heading(), rows, AS_MANY_AS_FIT, false, "", false);
    }
}
