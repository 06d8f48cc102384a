package org.evenfall.wizard.step.product;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.result.ProductLines;
import org.evenfall.setup.SieveTable;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.SievingEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.GridKeys;
import org.evenfall.wizard.form.QuantityField;
import org.evenfall.wizard.form.Slot;
import org.evenfall.wizard.form.TypedField;
import org.evenfall.wizard.form.VisibleWhen;

/**
 * The sieves and what was found on each of them: one row a class, the finest first, the aperture of its sieve and the amount
 * of every sample. Enter goes down the apertures and then down the amounts.
 */
final class SieveForm {

    private static final int MOST_SIEVES = 8;

    /** So many rows of sieves are always there, so that nothing moves while the first are typed. */
    private static final int FEWEST_ROWS = 5;

    private static final EntryPath<ProductEntries> PRODUCT = ProductPaths.PRODUCT.only();
    private static final EntryPath<List<EnteredQuantity>> APERTURES = PRODUCT.then(
            ProductPaths.APERTURES.name(),
            ProductEntries::apertures,
            (product, typed) -> product.withApertures(SieveTable.withoutBlankEnd(typed)));

    private final Form form;

    SieveForm(Form form) {
        this.form = form;
    }

    /** What the grid is made for. */
    private record Shape(int samples, AmountKind kind) {}

    private Shape shape() {
        ProductEntries product = form.model().setup().product();
        return new Shape(Math.max(1, product.sievings().size()), product.sieveAmounts());
    }

    Node node() {
        return new VBox(
                form.choice(ProductPaths.SIEVE_AMOUNTS),
                Slot.rebuiltOn(form, this::shape, part -> new SieveForm(part).grid(shape())),
                form.row(
                        form.alignedButton(form.button(
                                "product.moreSamples", () -> form.model().change(SieveTable::withOneSampleMore))),
                        form.quantity(ProductPaths.MEDIAN_SIZE)),
                VisibleWhen.sentence(form, "figure-line", this::result));
    }

    private Node grid(Shape shape) {
        GridPane grid = new GridPane();
        grid.setId(ProductPaths.SIEVINGS.pointer());
        grid.getStyleClass().addAll("rows", "sieves");
        GridKeys keys = new GridKeys(grid, false, row -> {});
        header(grid, form.words().text("field.aperture") + ", " + unit(ProductPaths.APERTURES), 1);
        for (int sample = 0; sample < shape.samples(); sample++) {
            header(grid, sampleName(sample) + ", " + unit(ProductPaths.SIEVING_AMOUNTS), sample + 2);
        }
        for (int row = 0; row <= MOST_SIEVES; row++) {
            row(grid, keys, shape, row);
        }
        form.mark(grid.getChildren(), pointer -> cellName(shape, pointer));
        return grid;
    }

    private void row(GridPane grid, GridKeys keys, Shape shape, int row) {
        Label name = new Label(form.words().text(row == 0 ? "product.finest" : "product.onSieve", Arg.count(row)));
        name.getStyleClass().addAll("row-number", "class-name");
        name.setWrapText(true);
        grid.add(name, 0, row + 1);
        if (row > 0) {
            TextField aperture = field(ProductPaths.APERTURES, QuantityList.item(APERTURES, row - 1));
            aperture.setAccessibleText(form.words().text("field.aperture") + ", " + className(row));
            keys.add(aperture, row, 0);
            form.follow(() -> shown(row, name, aperture));
        }
        for (int sample = 0; sample < shape.samples(); sample++) {
            TextField amount = field(ProductPaths.SIEVING_AMOUNTS, amount(sample, row));
            amount.setAccessibleText(sampleName(sample) + ", " + className(row));
            keys.add(amount, row, sample + 1);
            form.follow(() -> {
                shown(row, amount);
                // the class of a sieve is there once the sieve is
                amount.setDisable(row > sieves() && amount.getText().isEmpty());
            });
        }
    }

    private int sieves() {
        return APERTURES.get(form.model().setup()).size();
    }

    private void shown(int row, Node... nodes) {
        boolean shown = row <= Math.max(FEWEST_ROWS, sieves() + 1);
        for (Node node : nodes) {
            boolean appears = shown && !node.isVisible();
            node.setVisible(shown);
            node.setManaged(shown);
            if (appears) {
                // a field takes keys only once it is styled, and the next key may come before the next frame
                node.applyCss();
            }
        }
    }

    private TextField field(QuantityList<?> entry, EntryPath<EnteredQuantity> path) {
        TextField field = TypedField.number();
        field.setPrefColumnCount(6);
        new QuantityField(form, entry, path).bind(field);
        return field;
    }

    private static void header(GridPane grid, String text, int column) {
        Label header = new Label(text);
        header.getStyleClass().add("column-header");
        header.setWrapText(true);
        GridPane.setValignment(header, VPos.BOTTOM);
        grid.add(header, column, 0);
    }

    private String unit(QuantityList<?> entry) {
        return entry.units(form.model().setup()).get(0).symbol();
    }

    private static EntryPath<EnteredQuantity> amount(int sample, int at) {
        EntryPath<SievingEntry> sieving = ProductPaths.SIEVINGS.item(sample);
        return QuantityList.item(
                sieving.then(
                        ProductPaths.SIEVING_AMOUNTS.name(),
                        SievingEntry::amounts,
                        (old, typed) -> old.withAmounts(SieveTable.withoutBlankEnd(typed))),
                at);
    }

    private String cellName(Shape shape, String pointer) {
        for (int row = 0; row <= MOST_SIEVES; row++) {
            String name = className(row);
            if (row > 0 && pointer.equals(QuantityList.item(APERTURES, row - 1).pointer())) {
                return name;
            }
            for (int sample = 0; sample < shape.samples(); sample++) {
                if (pointer.equals(amount(sample, row).pointer())) {
                    return sampleName(sample) + ", " + name;
                }
            }
        }
        return "";
    }

    private String className(int row) {
        return form.words().text(row == 0 ? "product.finest" : "product.onSieve", Arg.count(row));
    }

    private String sampleName(int sample) {
        return form.words().text("product.sample", Arg.count(sample + 1L));
    }

    private String result() {
        return ProductLines.median(
                form.words(), form.model().assessment().product().sieve());
    }
}
