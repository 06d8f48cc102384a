package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.FieldSpec;
import org.evenfall.setup.Fields;
import org.evenfall.setup.ProductResult;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.SievingEntry;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.wizard.picture.DensityPicture;
import org.evenfall.wizard.picture.PictureStack;
import org.evenfall.wizard.picture.SievePicture;

/** Step 1: what is in the bag. */
final class ProductStep implements StepView {

    private static final EntryPath<ProductEntries> PRODUCT = Places.PRODUCT;
    private static final List<EnteredQuantity> USUAL_APERTURES = List.of(
            new EnteredQuantity("2.00", Unit.MM),
            new EnteredQuantity("3.15", Unit.MM),
            new EnteredQuantity("4.50", Unit.MM));

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
        return new VBox(identity(), condition(), density(), sieve());
    }

    private Node identity() {
        return form.group(
                "product.identity",
                form.row(
                        form.choice(
                                "product.treated",
                                "/product/treated",
                                PRODUCT.then(ProductEntries::treated, ProductEntries::withTreated),
                                Form.answers(YesNo.class)),
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
                        Form.answers(ProductForm.class)));
    }

    private Node condition() {
        return form.group(
                "product.conditionTitle",
                form.row(
                        form.choice(
                                "product.condition",
                                "/product/condition",
                                PRODUCT.then(ProductEntries::condition, ProductEntries::withCondition),
                                Form.answers(Condition.class)),
                        form.choice(
                                "product.blendAsk",
                                "/product/blend",
                                PRODUCT.then(ProductEntries::blend, ProductEntries::withBlend),
                                Form.answers(YesNo.class))),
                form.row(
                        form.choice(
                                "product.nitrateBefore",
                                "/product/nitrateBefore",
                                PRODUCT.then(ProductEntries::nitrateBefore, ProductEntries::withNitrateBefore),
                                Form.answers(YesNo.class)),
                        form.choice(
                                "product.cleanAndDry",
                                "/product/cleanAndDry",
                                PRODUCT.then(ProductEntries::cleanAndDry, ProductEntries::withCleanAndDry),
                                Form.answers(YesNo.class))));
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
                Rows.values(
                                form,
                                PRODUCT.then(ProductEntries::containerFull, ProductEntries::withContainerFull),
                                "/product/containerFull",
                                form.words().text("product.filling"),
                                Fields.CONTAINER_FULL)
                        .node(),
                result);
    }

    private Node sieve() {
        EntryPath<List<EnteredQuantity>> apertures = PRODUCT.then(
                product -> product.apertures().isEmpty() ? USUAL_APERTURES : product.apertures(),
                ProductEntries::withApertures);
        Label result = new Label();
        result.setWrapText(true);
        result.getStyleClass().add("figure-line");
        form.follow(() -> result.setText(sieveResult()));
        VBox classes = new VBox();
        List<String> shown = new ArrayList<>();
        form.follow(() -> {
            int sieves = apertures.get(form.model().setup()).size();
            int samples = Math.max(1, form.model().setup().product().sievings().size());
            AmountKind kind = form.model().setup().product().sieveAmounts();
            String now = sieves + "/" + samples + "/" + kind;
            if (!shown.contains(now)) {
                shown.clear();
                shown.add(now);
                classes.getChildren().setAll(classes(sieves, samples, kind));
            }
        });
        return form.group(
                "product.sieveTitle",
                form.sentence("product.sieveHow"),
                form.choice(
                        "product.sieveAmounts",
                        "/product/sieveAmounts",
                        PRODUCT.then(ProductEntries::sieveAmounts, ProductEntries::withSieveAmounts),
                        List.of(AmountKind.MASS, AmountKind.PERCENT, AmountKind.HEIGHT)),
                Rows.values(form, apertures, "/product/apertures", form.words().text("field.aperture"), Fields.APERTURE)
                        .node(),
                classes,
                form.row(form.button(
                        "product.moreSamples",
                        () -> form.model().change(setup -> {
                            List<SievingEntry> more =
                                    new ArrayList<>(setup.product().sievings());
                            more.add(SievingEntry.EMPTY);
                            if (more.size() == 1) {
                                more.add(SievingEntry.EMPTY);
                            }
                            return setup.withProduct(setup.product().withSievings(more));
                        }))),
                form.told("/product/sievings"),
                result);
    }

    /** One row a class, the finest first, one column a sample. The apertures shown are kept with the first amount. */
    private Node classes(int sieves, int samples, AmountKind kind) {
        FieldSpec spec = switch (kind) {
            case MASS -> Fields.SIEVE_MASS;
            case HEIGHT -> Fields.SIEVE_HEIGHT;
            default -> Fields.SIEVE_SHARE;
        };
        GridPane grid = new GridPane();
        grid.getStyleClass().add("rows");
        EntryPath<List<SievingEntry>> sievings = PRODUCT.then(ProductEntries::sievings, (product, list) -> {
            ProductEntries with = product.withSievings(list);
            return product.apertures().isEmpty() ? with.withApertures(USUAL_APERTURES) : with;
        });
        for (int sample = 0; sample < samples; sample++) {
            Label header = new Label(form.words().text("product.sample", Arg.count(sample + 1L)) + ", "
                    + spec.base().symbol());
            header.getStyleClass().add("column-header");
            grid.add(header, sample + 1, 0);
            EntryPath<List<EnteredQuantity>> amounts = EntryPath.item(sievings, sample, SievingEntry.EMPTY)
                    .then(SievingEntry::amounts, SievingEntry::withAmounts);
            for (int c = 0; c <= sieves; c++) {
                TextField field = new TextField();
                String pointer = "/product/sievings/" + sample + "/amounts/" + c;
                field.setId(pointer);
                field.setPrefColumnCount(6);
                form.bind(field, EntryPath.item(amounts, c, EnteredQuantity.EMPTY), spec);
                int below = c + 1;
                int column = sample;
                field.setOnAction(event -> {
                    grid.getChildren().stream()
                            .filter(cell -> ("/product/sievings/" + column + "/amounts/" + below).equals(cell.getId()))
                            .findFirst()
                            .ifPresent(Node::requestFocus);
                });
                grid.add(field, sample + 1, c + 1);
            }
        }
        for (int c = 0; c <= sieves; c++) {
            Label name = new Label();
            name.getStyleClass().add("row-number");
            int at = c;
            form.follow(() -> name.setText(className(at)));
            grid.add(name, 0, c + 1);
        }
        return grid;
    }

    private String className(int at) {
        List<EnteredQuantity> apertures =
                form.model().setup().product().apertures().isEmpty()
                        ? USUAL_APERTURES
                        : form.model().setup().product().apertures();
        if (at == 0) {
            return form.words()
                    .text("product.through", Arg.text(apertures.get(0).text()));
        }
        return at <= apertures.size()
                ? form.words().text("product.on", Arg.text(apertures.get(at - 1).text()))
                : "";
    }

    private String sieveResult() {
        var sieve = form.model().assessment().product().sieve();
        return sieve == null
                ? ""
                : form.words()
                        .text(
                                "product.sieveResult",
                                Arg.number(sieve.d50Mm(), 1, Unit.MM),
                                Arg.number(sieve.d50IntervalMm().low(), 1, Unit.NONE),
                                Arg.number(sieve.d50IntervalMm().high(), 1, Unit.MM),
                                Arg.number(sieve.indices().spreadIndexPercent(), 0, Unit.PERCENT),
                                Arg.number(sieve.shareUnder2MmPercent(), 0, Unit.PERCENT),
                                Arg.number(sieve.indices().sgn(), 0, Unit.NONE),
                                Arg.number(sieve.indices().uniformityIndex(), 0, Unit.NONE));
    }
}
