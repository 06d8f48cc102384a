package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.result.ProductLines;
import org.evenfall.setup.ProductResult;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.picture.DensityPicture;
import org.evenfall.wizard.picture.PictureStack;
import org.evenfall.wizard.picture.SievePicture;

/** Step 1: what is in the bag. */
final class ProductStep implements StepView {

    private final Form form;
    private final SievePicture sieve;
    private final DensityPicture density;
    private final PictureStack picture;

    ProductStep(Form form) {
        this.form = form;
        this.sieve = new SievePicture(form.words());
        this.density = new DensityPicture(form.words());
        this.picture = new PictureStack(density, sieve);
        form.follow(() -> {
            ProductResult product = form.model().assessment().product();
            sieve.show(product.sieve(), product.bands());
            density.show(product.density(), product.bands());
        });
    }

    @Override
    public Step step() {
        return Step.PRODUCT;
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public String result() {
        ProductResult result = form.model().assessment().product();
        List<String> parts = new ArrayList<>();
        if (result.density() != null) {
            parts.add(form.words().number(result.density().meanKgPerL(), 2, Unit.KG_PER_L));
        }
        if (result.sieve() != null) {
            parts.add(form.words().number(result.sieve().d50Mm(), 1, Unit.MM));
        }
        return String.join(" · ", parts);
    }

    @Override
    public Node entries() {
        return new VBox(identity(), condition(), density(), new SieveForm(form).node());
    }

    private Node identity() {
        return form.group(
                "product.identity",
                form.row(
                        form.choice(ProductPaths.TREATED),
                        form.text(ProductPaths.INHIBITOR),
                        form.text(ProductPaths.USE_BY)),
                form.row(
                        form.text(ProductPaths.NAME),
                        form.text(ProductPaths.DELIVERY),
                        form.quantity(ProductPaths.NITROGEN)),
                form.choice(ProductPaths.FORM));
    }

    private Node condition() {
        return form.group(
                "product.conditionTitle",
                form.row(form.choice(ProductPaths.CONDITION), form.choice(ProductPaths.BLEND)),
                form.row(form.choice(ProductPaths.NITRATE_BEFORE), form.choice(ProductPaths.CLEAN_AND_DRY)));
    }

    private Node density() {
        Label result = new Label();
        result.getStyleClass().add("figure-line");
        form.follow(() -> {
            result.setText(ProductLines.density(
                    form.words(), form.model().assessment().product().density()));
        });
        return form.group(
                "product.densityTitle",
                form.sentence("product.densityHow"),
                form.row(
                        form.quantity(ProductPaths.BAGS_SAMPLED),
                        form.quantity(ProductPaths.BAGS_DELIVERED),
                        form.quantity(ProductPaths.CONTAINER_VOLUME),
                        form.quantity(ProductPaths.CONTAINER_EMPTY)),
                EntryTable.values(form, ProductPaths.CONTAINER_FULL).node(),
                result);
    }
}
