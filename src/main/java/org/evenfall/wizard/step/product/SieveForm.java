package org.evenfall.wizard.step.product;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.result.ProductLines;
import org.evenfall.setup.DefaultSieves;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.SievingEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.GridKeys;
import org.evenfall.wizard.form.QuantityField;
import org.evenfall.wizard.form.Slot;
import org.evenfall.wizard.form.VisibleWhen;

/** Step 1: the sieves, and what was found on each of them in every sample. */
final class SieveForm {

    private static final EntryPath<ProductEntries> PRODUCT = ProductPaths.PRODUCT.only();
    private static final EntryPath<List<EnteredQuantity>> APERTURES =
            PRODUCT.then(ProductPaths.APERTURES.name(), DefaultSieves::apertures, ProductEntries::withApertures);
    private static final EntryPath<List<SievingEntry>> SIEVINGS =
            PRODUCT.then(ProductPaths.SIEVINGS.name(), ProductEntries::sievings, DefaultSieves::withSievings);

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
        return new VBox(
                form.choice(ProductPaths.SIEVE_AMOUNTS),
                EntryTable.values(form, ProductPaths.APERTURES, APERTURES, true).node(),
                Slot.rebuiltOn(form, this::shape, part -> new SieveForm(part).amounts(shape())),
                form.row(form.button(
                        "product.moreSamples", () -> form.model().change(DefaultSieves::withOneSampleMore))),
                VisibleWhen.sentence(form, "figure-line", this::result));
    }

    /** One row a class, the finest first, one column a sample. The sieves shown are kept with the first amount. */
    private Node amounts(Shape shape) {
        String unit =
                ProductPaths.SIEVING_AMOUNTS.units(form.model().setup()).get(0).symbol();
        GridPane grid = new GridPane();
        grid.setId(SIEVINGS.pointer());
        grid.getStyleClass().add("rows");
        GridKeys keys = new GridKeys(grid, false, row -> {});
        for (int sample = 0; sample < shape.samples(); sample++) {
            Label header = new Label(sampleName(sample) + ", " + unit);
            header.getStyleClass().add("column-header");
            grid.add(header, sample + 1, 0);
            for (int at = 0; at <= shape.sieves(); at++) {
                TextField field = new TextField();
                field.setPrefColumnCount(6);
                new QuantityField(form, ProductPaths.SIEVING_AMOUNTS, amount(sample, at)).bind(field);
                keys.add(field, at, sample);
                String ofSample = sampleName(sample);
                int row = at;
                form.follow(() -> field.setAccessibleText(ofSample + ", " + className(row)));
            }
        }
        for (int at = 0; at <= shape.sieves(); at++) {
            Label name = new Label();
            name.getStyleClass().addAll("row-number", "class-name");
            int row = at;
            form.follow(() -> name.setText(className(row)));
            grid.add(name, 0, at + 1);
        }
        form.mark(grid.getChildren(), pointer -> cellName(shape, pointer));
        return grid;
    }

    private static EntryPath<EnteredQuantity> amount(int sample, int at) {
        EntryPath<SievingEntry> sieving = ProductPaths.SIEVINGS.item(SIEVINGS, sample);
        return QuantityList.item(ProductPaths.SIEVING_AMOUNTS.at(sieving), at);
    }

    private String cellName(Shape shape, String pointer) {
        for (int sample = 0; sample < shape.samples(); sample++) {
            for (int at = 0; at <= shape.sieves(); at++) {
                if (pointer.equals(amount(sample, at).pointer())) {
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
        return ProductLines.sieve(
                form.words(), form.model().assessment().product().sieve());
    }
}
