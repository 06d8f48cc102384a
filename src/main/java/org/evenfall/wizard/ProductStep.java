package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Fields;
import org.evenfall.setup.ProductResult;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.wizard.form.Choices;
import org.evenfall.wizard.form.EntryPath;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.picture.DensityPicture;
import org.evenfall.wizard.picture.PictureStack;
import org.evenfall.wizard.picture.SievePicture;

/** Step 1: what is in the bag. */
final class ProductStep implements StepView {

    private static final EntryPath<ProductEntries> PRODUCT = Places.PRODUCT;

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
                        form.choice(
                                "product.treated",
                                "/product/treated",
                                PRODUCT.then(ProductEntries::treated, ProductEntries::withTreated),
                                Choices.answers(YesNo.class)),
                        form.text(
                                "product.inhibitor",
                                "/product/inhibitor",
                                PRODUCT.then(ProductEntries::inhibitor, ProductEntries::withInhibitor)),
                        form.text(
                                "product.useBy",
                                "/product/useBy",
                                PRODUCT.then(ProductEntries::useBy, ProductEntries::withUseBy))),
                form.row(
                        form.text(
                                "product.name",
                                "/product/name",
                                PRODUCT.then(ProductEntries::name, ProductEntries::withName)),
                        form.text(
                                "product.delivery",
                                "/product/delivery",
                                PRODUCT.then(ProductEntries::delivery, ProductEntries::withDelivery)),
                        form.typed(
                                "field.nitrogenShare",
                                Fields.NITROGEN_SHARE,
                                "/product/nitrogen",
                                PRODUCT.then(ProductEntries::nitrogen, ProductEntries::withNitrogen))),
                form.choice(
                        "product.form",
                        "/product/form",
                        PRODUCT.then(ProductEntries::form, ProductEntries::withForm),
                        Choices.answers(ProductForm.class)));
    }

    private Node condition() {
        return form.group(
                "product.conditionTitle",
                form.row(
                        form.choice(
                                "product.condition",
                                "/product/condition",
                                PRODUCT.then(ProductEntries::condition, ProductEntries::withCondition),
                                Choices.answers(Condition.class)),
                        form.choice(
                                "product.blendAsk",
                                "/product/blend",
                                PRODUCT.then(ProductEntries::blend, ProductEntries::withBlend),
                                Choices.answers(YesNo.class))),
                form.row(
                        form.choice(
                                "product.nitrateBefore",
                                "/product/nitrateBefore",
                                PRODUCT.then(ProductEntries::nitrateBefore, ProductEntries::withNitrateBefore),
                                Choices.answers(YesNo.class)),
                        form.choice(
                                "product.cleanAndDry",
                                "/product/cleanAndDry",
                                PRODUCT.then(ProductEntries::cleanAndDry, ProductEntries::withCleanAndDry),
                                Choices.answers(YesNo.class))));
    }

    private Node density() {
        Label result = new Label();
        result.getStyleClass().add("figure-line");
        form.follow(() -> {
            var density = form.model().assessment().product().density();
            result.setText(
                    density == null
                            ? ""
                            : form.words()
                                    .text(
                                            "product.densityResult",
                                            Arg.number(density.meanKgPerL(), 2, Unit.KG_PER_L),
                                            Arg.number(density.spreadPercent(), 1, Unit.PERCENT)));
        });
        return form.group(
                "product.densityTitle",
                form.sentence("product.densityHow"),
                form.row(
                        form.typed(
                                "field.bagsSampled",
                                Fields.BAGS,
                                "/product/bagsSampled",
                                PRODUCT.then(ProductEntries::bagsSampled, ProductEntries::withBagsSampled)),
                        form.typed(
                                "field.bagsDelivered",
                                Fields.BAGS,
                                "/product/bagsDelivered",
                                PRODUCT.then(ProductEntries::bagsDelivered, ProductEntries::withBagsDelivered)),
                        form.typed(
                                "field.containerVolume",
                                Fields.CONTAINER_VOLUME,
                                "/product/containerVolume",
                                PRODUCT.then(ProductEntries::containerVolume, ProductEntries::withContainerVolume)),
                        form.typed(
                                "field.containerEmpty",
                                Fields.CONTAINER_EMPTY,
                                "/product/containerEmpty",
                                PRODUCT.then(ProductEntries::containerEmpty, ProductEntries::withContainerEmpty))),
                EntryTable.values(
                                form,
                                PRODUCT.then(ProductEntries::containerFull, ProductEntries::withContainerFull),
                                "/product/containerFull",
                                form.words().text("product.filling"),
                                Fields.CONTAINER_FULL)
                        .node(),
                result);
    }
}
