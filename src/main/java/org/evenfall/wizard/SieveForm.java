package org.evenfall.wizard;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.granule.SieveResult;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.DefaultSieves;
import org.evenfall.setup.FieldSpec;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.SievingEntry;
import org.evenfall.wizard.form.EntryPath;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.GridKeys;
import org.evenfall.wizard.form.Slot;
import org.evenfall.wizard.form.VisibleWhen;

/** Step 1: the sieves, and what was found on each of them in every sample. */
final class SieveForm {

    private static final EntryPath<ProductEntries> PRODUCT = Places.PRODUCT;
    private static final EntryPath<List<EnteredQuantity>> APERTURES =
            PRODUCT.then(DefaultSieves::apertures, ProductEntries::withApertures);
    private static final EntryPath<List<SievingEntry>> SIEVINGS =
            PRODUCT.then(ProductEntries::sievings, DefaultSieves::withSievings);

    private final Form form;

    SieveForm(Form form) {
        this.form = form;
    }

    /** What the grid of amounts depends on. */
    private record Shape(int sieves, int samples, AmountKind kind) {}

    private Shape shape() {
        ProductEntries product = form.model().setup().product();
        return new Shape(
                DefaultSieves.apertures(product).size(),
                Math.max(1, product.sievings().size()),
                product.sieveAmounts());
    }

    Node node() {
        return form.group(
                "product.sieveTitle",
                form.sentence("product.sieveHow"),
                form.choice(
                        "product.sieveAmounts",
                        "/product/sieveAmounts",
                        PRODUCT.then(ProductEntries::sieveAmounts, ProductEntries::withSieveAmounts),
                        List.of(AmountKind.MASS, AmountKind.PERCENT, AmountKind.HEIGHT)),
                EntryTable.values(
                                form,
                                APERTURES,
                                "/product/apertures",
                                form.words().text("field.aperture"),
                                Fields.APERTURE)
                        .node(),
                Slot.rebuiltOn(form, this::shape, part -> new SieveForm(part).amounts(shape())),
                form.row(form.button(
                        "product.moreSamples", () -> form.model().change(DefaultSieves::withOneSampleMore))),
                VisibleWhen.sentence(form, "figure-line", this::result));
    }

    /** One row a class, the finest first, one column a sample. The sieves shown are kept with the first amount. */
    private Node amounts(Shape shape) {
        FieldSpec spec = switch (shape.kind()) {
            case MASS -> Fields.SIEVE_MASS;
            case HEIGHT -> Fields.SIEVE_HEIGHT;
            default -> Fields.SIEVE_SHARE;
        };
        GridPane grid = new GridPane();
        grid.getStyleClass().add("rows");
        GridKeys keys = new GridKeys(grid);
        for (int sample = 0; sample < shape.samples(); sample++) {
            Label header = new Label(sampleName(sample) + ", " + spec.base().symbol());
            header.getStyleClass().add("column-header");
            grid.add(header, sample + 1, 0);
            EntryPath<List<EnteredQuantity>> amounts = EntryPath.item(SIEVINGS, sample, SievingEntry.EMPTY)
                    .then(SievingEntry::amounts, SievingEntry::withAmounts);
            for (int at = 0; at <= shape.sieves(); at++) {
                TextField field = new TextField();
                field.setId(pointer(sample, at));
                field.setPrefColumnCount(6);
                form.bind(field, EntryPath.item(amounts, at, EnteredQuantity.EMPTY), spec);
                keys.add(field, at, sample);
            }
        }
        for (int at = 0; at <= shape.sieves(); at++) {
            Label name = new Label();
            name.getStyleClass().add("row-number");
            int row = at;
            form.follow(() -> name.setText(className(row)));
            grid.add(name, 0, at + 1);
        }
        return new VBox(
                grid,
                form.findingsOfCells("/product/sievings", grid.getChildren(), pointer -> cellName(shape, pointer)));
    }

    private static String pointer(int sample, int at) {
        return "/product/sievings/" + sample + "/amounts/" + at;
    }

    private String cellName(Shape shape, String pointer) {
        for (int sample = 0; sample < shape.samples(); sample++) {
            for (int at = 0; at <= shape.sieves(); at++) {
                if (pointer.equals(pointer(sample, at))) {
                    return sampleName(sample) + ", " + className(at);
                }
            }
        }
        return "";
    }

    private String sampleName(int sample) {
        return form.words().text("product.sample", Arg.count(sample + 1L));
    }

    private String className(int at) {
        List<EnteredQuantity> apertures =
                DefaultSieves.apertures(form.model().setup().product());
        if (at == 0) {
            return form.words()
                    .text("product.through", Arg.text(apertures.get(0).text()));
        }
        return at <= apertures.size()
                ? form.words().text("product.on", Arg.text(apertures.get(at - 1).text()))
                : "";
    }

    private String result() {
        SieveResult sieve = form.model().assessment().product().sieve();
        return sieve == null
                ? ""
                : form.words()
                        .text(
                                "product.sieveResult",
                                Arg.number(sieve.d50Mm(), 1, Unit.MM),
                                Arg.number(sieve.d50LowMm(), 1, Unit.NONE),
                                Arg.number(sieve.d50HighMm(), 1, Unit.MM),
                                Arg.number(sieve.spreadIndexPercent(), 0, Unit.PERCENT),
                                Arg.number(sieve.shareUnder2MmPercent(), 0, Unit.PERCENT),
                                Arg.number(sieve.sgn(), 0, Unit.NONE),
                                Arg.number(sieve.uniformityIndex(), 0, Unit.NONE));
    }
}
