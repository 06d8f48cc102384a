package org.evenfall.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.Side;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.CheckAnswers;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.HeightEntries;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.VaneEntry;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.sheet.SheetContent.Block;
import org.evenfall.sheet.SheetContent.Box;
import org.evenfall.sheet.SheetContent.Choice;
import org.evenfall.sheet.SheetContent.Choices;
import org.evenfall.sheet.SheetContent.Entries;
import org.evenfall.sheet.SheetContent.Row;

/** The boxes for what is measured in the yard, in the order of the prompts. */
record YardBlocks(Setup setup, Sentences words) {

    /** As the guide asks: three fillings at least. */
    private static final int FILLINGS = 3;

    /** Sieves of a sheet while none is entered; as many rows the screen has at first. */
    private static final int USUAL_SIEVES = 5;

    private static final int SIEVE_SAMPLES = 2;

    /** Assumption: places enough to see whether the crop is even. */
    private static final int CROP_PLACES = 5;

    List<Block> blocks() {
        Boxes sample = boxes("1e");
        Boxes pto = boxes("3d");
        Boxes crop = boxes("4a");
        Boxes chain = boxes("4c");
        return List.of(
                sample.row(
                        sample.filled(
                                ProductPaths.BAGS_DELIVERED, setup.product().bagsDelivered()),
                        sample.blank(ProductPaths.BAGS_SAMPLED)),
                density(),
                sieves(),
                walk(),
                vanes(),
                level(),
                pto.row(
                        pto.blank(MachineCheckPaths.PTO_MEASURED),
                        Boxes.grey(pto.text(
                                MachineCheckPaths.PTO_INSTRUMENT,
                                setup.machineCheck().ptoInstrument())),
                        Boxes.grey(pto.blank(MachineCheckPaths.ENGINE_SPEED)),
                        Boxes.grey(pto.text(MachineCheckPaths.GEAR, ""))),
                crop.rows(List.of(new Row("", 0, crop.numbered(HeightPaths.CROP_HEIGHTS, CROP_PLACES)))),
                height(),
                chain.row(chain.filled(HeightPaths.CHAIN_POINT, setup.height().chainPoint())));
    }

    private Boxes boxes(String promptId) {
        return new Boxes(setup, words, promptId);
    }

    private Entries density() {
        Boxes boxes = boxes("1f");
        ProductEntries product = setup.product();
        List<Box> row = new ArrayList<>();
        row.add(boxes.filled(ProductPaths.CONTAINER_VOLUME, product.containerVolume()));
        row.add(boxes.filled(ProductPaths.CONTAINER_EMPTY, product.containerEmpty()));
        row.addAll(boxes.numbered(ProductPaths.CONTAINER_FULL, FILLINGS));
        return boxes.rows(List.of(new Row("", 0, row)));
    }

    /** Apertures first, then the amounts of each sample, the finest class first: as Enter goes on the screen. */
    private Entries sieves() {
        Boxes boxes = boxes("1g");
        ProductEntries product = setup.product();
        int sieves = product.apertures().isEmpty()
                ? USUAL_SIEVES
                : product.apertures().size();
        List<Row> rows = new ArrayList<>();
        List<Box> apertures = new ArrayList<>();
        for (int i = 1; i <= sieves; i++) {
            EnteredQuantity known = product.apertures().isEmpty()
                    ? EnteredQuantity.EMPTY
                    : product.apertures().get(i - 1);
            apertures.add(boxes.named(sieve(i), ProductPaths.APERTURES.units(setup), known));
        }
        rows.add(new Row(words.text("field.aperture"), 1, apertures));
        String unit = product.sieveAmounts() == AmountKind.UNANSWERED
                ? words.text("sheet.sieveUnit")
                : boxes.unit(ProductPaths.SIEVING_AMOUNTS);
        for (int sample = 1; sample <= SIEVE_SAMPLES; sample++) {
            List<Box> amounts = new ArrayList<>();
            for (int i = 0; i <= sieves; i++) {
                amounts.add(boxes.blank(sieve(i), unit));
            }
            rows.add(new Row(words.text("product.sample", Arg.count(sample)), 0, amounts));
        }
        rows.add(new Row("", 0, List.of(median(boxes, product.medianSize()))));
        return new Entries(boxes.heading(), rows, Boxes.AS_MANY_AS_FIT, true, "", false);
    }

    /** Its label names both units in which a bag prints it. */
    private Box median(Boxes boxes, EnteredQuantity known) {
        Box box = boxes.filled(ProductPaths.MEDIAN_SIZE, known);
        return new Box(box.promptId(), box.label(), "", true, known.isBlank() ? "" : words.typed(known), "", false);
    }

    private String sieve(int number) {
        return number == 0 ? words.text("product.finest") : words.text("product.onSieve", Arg.count(number));
    }

    /** The guards first and by themselves, then the other parts in the order of the walk. */
    private Choices walk() {
        return new Choices(
                boxes("3a").heading(),
                part(CheckItem.GUARDS),
                Arrays.stream(CheckItem.values())
                        .filter(item -> item != CheckItem.GUARDS)
                        .map(this::part)
                        .toList());
    }

    private Choice part(CheckItem item) {
        return new Choice(
                words.choice(item),
                CheckAnswers.answers(item).stream().map(words::choice).toList());
    }

    private Entries vanes() {
        Boxes boxes = boxes("3b");
        List<Row> rows = new ArrayList<>();
        for (VaneEntry vane : vaneList()) {
            Box condition = boxes.blank(
                    words.text(MachineCheckPaths.VANE_STRAIGHT_SMOOTH_UNHOLED.labelKey()),
                    words.text("sheet.goodOrFailed"));
            rows.add(new Row(
                    words.text("sheet.vane", Arg.text(words.choice(vane.disc())), Arg.text(vane.label())),
                    0,
                    List.of(
                            boxes.blank(MachineCheckPaths.VANE_LENGTH),
                            boxes.filled(MachineCheckPaths.VANE_LENGTH_NEW, vane.lengthNew()),
                            condition)));
        }
        return boxes.rows(rows);
    }

    /** The vanes of the setup; a long and a short one on each disc while none is entered. */
    private List<VaneEntry> vaneList() {
        if (!setup.machineCheck().vanes().isEmpty()) {
            return setup.machineCheck().vanes();
        }
        List<VaneEntry> usual = new ArrayList<>();
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            usual.add(VaneEntry.EMPTY.withDisc(side).withLabel(words.text("sheet.vaneLong")));
            usual.add(VaneEntry.EMPTY.withDisc(side).withLabel(words.text("sheet.vaneShort")));
        }
        return usual;
    }

    private Entries level() {
        Boxes boxes = boxes("3c");
        return boxes.row(
                boxes.blank(MachineCheckPaths.HEIGHT_LEFT),
                boxes.blank(MachineCheckPaths.HEIGHT_RIGHT),
                Boxes.grey(boxes.blank(MachineCheckPaths.TILT)),
                Boxes.grey(boxes.blank(MachineCheckPaths.TYRE_LEFT)),
                Boxes.grey(boxes.blank(MachineCheckPaths.TYRE_RIGHT)));
    }

    private Entries height() {
        Boxes boxes = boxes("4b");
        HeightEntries height = setup.height();
        EnteredQuantity wanted = height.wanted().isBlank() ? setup.machine().wantedHeight() : height.wanted();
        String point = height.referencePoint().isBlank() ? setup.machine().referencePoint() : height.referencePoint();
        return boxes.row(
                boxes.filled(HeightPaths.WANTED, wanted),
                boxes.text(HeightPaths.REFERENCE_POINT, point),
                boxes.blank(HeightPaths.LEFT),
                boxes.blank(HeightPaths.RIGHT),
                Boxes.grey(boxes.blank(HeightPaths.FRONT)),
                Boxes.grey(boxes.blank(HeightPaths.REAR)));
    }
}
