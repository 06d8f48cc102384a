package org.evenfall.sheet;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.BucketTestDraft;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.sheet.SheetContent.Block;
import org.evenfall.sheet.SheetContent.Box;
import org.evenfall.sheet.SheetContent.Entries;
import org.evenfall.sheet.SheetContent.Heading;
import org.evenfall.sheet.SheetContent.Notice;
import org.evenfall.sheet.SheetContent.Row;

/** The boxes for what is measured in the field, in the order of the prompts. */
record FieldBlocks(Setup setup, Assessment assessment, Sentences words, SheetLines lines) {

    private static final int SPEED_RUNS = 2;
    private static final int BUCKET_TESTS = 3;
    private static final int CATCHES = 2;

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(speed());
        blocks.add(bucket());
        blocks.add(new TrayPlanBlock(setup, assessment, words).plan());
        blocks.addAll(new TrayTestBlocks(setup, assessment, words).blocks());
        blocks.add(firstMove());
        return blocks;
    }

    private Notice firstMove() {
        if (lines.firstMove().isEmpty()) {
            return new Notice(words.text("firstMove.heading"), List.of(words.text("sheet.noFirstMove")));
        }
        List<String> sentences =
                new ArrayList<>(lines.firstMove().subList(1, lines.firstMove().size()));
        AmountKind kind = setup.trays().catchKind();
        if (kind == AmountKind.VOLUME || kind == AmountKind.HEIGHT) {
            sentences.add(words.text("sheet.weighed"));
        }
        return new Notice(lines.firstMove().get(0), sentences);
    }

    private Entries speed() {
        Boxes boxes = new Boxes(setup, words, "5d");
        List<Box> row = new ArrayList<>();
        for (int run = 0; run < SPEED_RUNS; run++) {
            row.add(boxes.filled(RatePaths.RUN_DISTANCE, distance(run)));
            row.add(boxes.blank(RatePaths.RUN_TIME));
        }
        return boxes.rows(List.of(new Row("", 0, row)));
    }

    private EnteredQuantity distance(int run) {
        return run < setup.rate().speedRuns().size()
                ? setup.rate().speedRuns().get(run).distance()
                : EnteredQuantity.EMPTY;
    }

    private Entries bucket() {
        Boxes boxes = new Boxes(setup, words, "5e");
        boolean byFactor = setup.machine().rateSetting().byFactor();
        List<BucketEntry> tests = BucketTestDraft.added(setup, assessment, Boxes.numbers(words))
                .rate()
                .bucketTests();
        BucketEntry next = tests.get(tests.size() - 1);
        List<Row> rows = new ArrayList<>();
        for (int test = 1; test <= BUCKET_TESTS; test++) {
            rows.add(new Row(
                    words.text("sheet.test", Arg.count(test)),
                    0,
                    bucketRow(boxes, byFactor, test == 1 ? next : later(next))));
        }
        List<String> notes = new ArrayList<>();
        if (!lines.bucket().isEmpty()) {
            notes.add(words.text("sheet.target", Arg.text(String.join(" · ", lines.bucket()))));
        }
        notes.add(words.text(byFactor ? "rate.bucketHowFactor" : "rate.bucketHow"));
        Heading heading = boxes.heading(words.text("prompt.5e.name"), notes);
        return new Entries(heading, rows, Boxes.AS_MANY_AS_FIT, true, "", false);
    }

    private List<Box> bucketRow(Boxes boxes, boolean byFactor, BucketEntry known) {
        List<Box> row = new ArrayList<>();
        row.add(boxes.filled(RatePaths.BUCKET_OPENING_LEFT, known.openingLeft()));
        if (!byFactor) {
            row.add(boxes.filled(RatePaths.BUCKET_OPENING_RIGHT, known.openingRight()));
        }
        row.add(boxes.filled(RatePaths.BUCKET_TIME, known.time()));
        row.add(boxes.filled(RatePaths.BUCKET_BUCKET_EMPTY, known.bucketEmpty()));
        if (byFactor) {
            row.add(boxes.blank(RatePaths.BUCKET_SHOWN));
        }
        String unit = boxes.unit(RatePaths.BUCKET_LEFT);
        for (String side : List.of(words.text("height.left"), words.text("height.right"))) {
            for (int i = 1; i <= CATCHES; i++) {
                row.add(boxes.blank(boxes.numberedLabel(side, i), unit));
            }
        }
        return row;
    }

    /** What stays the same in a later test: time and bucket. */
    private static BucketEntry later(BucketEntry first) {
        return first.withOpeningLeft(EnteredQuantity.EMPTY).withOpeningRight(EnteredQuantity.EMPTY);
    }
}
