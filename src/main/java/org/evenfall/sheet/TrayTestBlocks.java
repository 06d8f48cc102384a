package org.evenfall.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.TrayTestDraft;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.SettingsPaths;
import org.evenfall.setup.path.TestConditionPaths;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.sheet.SheetContent.Block;
import org.evenfall.sheet.SheetContent.Box;
import org.evenfall.sheet.SheetContent.Entries;
import org.evenfall.sheet.SheetContent.Row;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;

/** Three tray tests on three strips: what each is driven with, then its catches. */
record TrayTestBlocks(Setup setup, Assessment assessment, Sentences words) {

    private static final int TESTS = 3;

    /** Catches in one line, as on the screen. */
    private static final int IN_A_LINE = 7;

    List<Block> blocks() {
        List<TrayTestEntry> tests = TrayTestDraft.added(setup, assessment, Boxes.numbers(words))
                .trays()
                .tests();
        TrayTestEntry next = tests.get(tests.size() - 1);
        List<Block> blocks = new ArrayList<>();
        for (int test = 1; test <= TESTS; test++) {
            blocks.add(settings(test, test == 1 ? next : later(next)));
            blocks.add(catches(test));
        }
        return blocks;
    }

    /** What stays the same in a later test: all but levers, openings, wind and date. */
    private static TrayTestEntry later(TrayTestEntry first) {
        return first.withDate("")
                .withWind(EnteredQuantity.EMPTY)
                .withOpeningLeft(EnteredQuantity.EMPTY)
                .withOpeningRight(EnteredQuantity.EMPTY)
                .withSettings(first.settings().withLevers(Map.of()));
    }

    private Entries settings(int test, TrayTestEntry known) {
        Boxes boxes = new Boxes(setup, words, "6b");
        List<Box> row = new ArrayList<>();
        for (Lever lever : assessment.machine().levers()) {
            row.add(boxes.set(
                    lever.label(),
                    List.of(Unit.NONE),
                    known.settings().levers().getOrDefault(lever.label(), EnteredQuantity.EMPTY)));
        }
        if (assessment.machine().levers().isEmpty()) {
            row.add(boxes.blank(words.text("field.leverValue"), ""));
        }
        row.add(boxes.set(SettingsPaths.PTO_SPEED, known.settings().ptoSpeed()));
        row.add(boxes.set(TrayPaths.TEST_OPENING_LEFT, known.openingLeft()));
        if (!setup.machine().rateSetting().byFactor()) {
            row.add(boxes.set(TrayPaths.TEST_OPENING_RIGHT, known.openingRight()));
        }
        row.add(boxes.set(TestConditionPaths.HEIGHT_OVER_RIM, known.conditions().heightOverRim()));
        row.add(boxes.set(TestConditionPaths.SPEED, known.conditions().speed()));
        row.add(boxes.blank(TrayPaths.TEST_WIND));
        row.add(boxes.set(words.text("sheet.runsDriven"), List.of(Unit.NONE), known.runs()));
        row.add(boxes.blank(words.text(TrayPaths.TEST_DATE.labelKey()), ""));
        row.add(boxes.blank(words.text(TestConditionPaths.STRIP.labelKey()), ""));
        row.add(boxes.blank(words.text(TestConditionPaths.TRAVEL_DIRECTION.labelKey()), ""));
        return new Entries(
                boxes.heading(words.text("sheet.before", Arg.count(test)), List.of()),
                List.of(new Row("", 0, row)),
                Boxes.AS_MANY_AS_FIT,
                false,
                words.text("sheet.asSet"),
                true);
    }

    private Entries catches(int test) {
        Boxes boxes = new Boxes(setup, words, "6c");
        TrayLayout layout = assessment.trays().layout();
        int trays =
                layout == null ? TrayLayouts.USUAL_TRAYS : layout.positionsM().size();
        List<Box> row = new ArrayList<>();
        for (int i = 0; i < trays; i++) {
            String label = layout == null
                    ? words.text("sheet.tray", Arg.count(i + 1L))
                    : words.text(
                            "sheet.trayAt",
                            Arg.count(i + 1L),
                            Arg.number(layout.positionsM().get(i), 1, Unit.M));
            row.add(boxes.blank(label, boxes.unit(TrayPaths.TEST_CATCHES)));
        }
        return new Entries(
                boxes.heading(words.text("sheet.catches", Arg.count(test)), List.of()),
                List.of(new Row("", 0, row)),
                IN_A_LINE,
                false,
                "",
                // the first move, which follows, is never on a page without a test
                test == TESTS);
    }
}
