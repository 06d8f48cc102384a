package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.UnitsBasis;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.PlanEntries;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.wizard.form.Choices;
import org.evenfall.wizard.form.EntryPath;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.VisibleWhen;
import org.jspecify.annotations.Nullable;

/** Step 5, the plan: how much, how fast, on what, and what it costs. */
final class RatePlanForm {

    private static final EntryPath<PlanEntries> PLAN = Places.PLAN;

    private final Form form;

    RatePlanForm(Form form) {
        this.form = form;
    }

    private @Nullable RatePlan plan() {
        return form.model().assessment().rate().plan();
    }

    private boolean byProduct() {
        return form.model().setup().rate().plan().basis() == RateBasis.PRODUCT;
    }

    private boolean inUnits() {
        return form.model().setup().rate().plan().nitrogenRate().unit() == Unit.UNITS;
    }

    Node amounts() {
        return form.group(
                "rate.plan",
                form.choice(
                        "rate.basis",
                        "/rate/plan/basis",
                        PLAN.then(PlanEntries::basis, PlanEntries::withBasis),
                        Choices.answers(RateBasis.class)),
                form.row(
                        VisibleWhen.when(
                                form,
                                () -> !byProduct(),
                                form.typed(
                                        "field.nitrogenRate",
                                        Fields.NITROGEN_RATE,
                                        "/rate/plan/nitrogenRate",
                                        PLAN.then(PlanEntries::nitrogenRate, PlanEntries::withNitrogenRate))),
                        VisibleWhen.when(
                                form,
                                () -> !byProduct() && inUnits(),
                                form.choice(
                                        "rate.unit",
                                        "/rate/plan/unitsBasis",
                                        PLAN.then(PlanEntries::unitsBasis, PlanEntries::withUnitsBasis),
                                        Choices.answers(UnitsBasis.class))),
                        VisibleWhen.when(
                                form,
                                this::byProduct,
                                form.typed(
                                        "field.productRate",
                                        Fields.PRODUCT_RATE,
                                        "/rate/plan/productRate",
                                        PLAN.then(PlanEntries::productRate, PlanEntries::withProductRate))),
                        form.typed(
                                "field.speed",
                                Fields.SPEED,
                                "/rate/plan/speed",
                                PLAN.then(PlanEntries::speed, PlanEntries::withSpeed)),
                        form.typed(
                                "field.area",
                                Fields.AREA,
                                "/rate/plan/area",
                                PLAN.then(PlanEntries::area, PlanEntries::withArea)),
                        form.typed(
                                "field.bagMass",
                                Fields.BAG_MASS,
                                "/rate/plan/bagMass",
                                PLAN.then(PlanEntries::bagMass, PlanEntries::withBagMass)),
                        form.typed(
                                "field.hopperVolume",
                                Fields.HOPPER_VOLUME,
                                "/rate/plan/hopperVolume",
                                PLAN.then(PlanEntries::hopperVolume, PlanEntries::withHopperVolume)),
                        form.typed(
                                "field.bucketVolume",
                                Fields.BUCKET_VOLUME,
                                "/rate/plan/bucketVolume",
                                PLAN.then(PlanEntries::bucketVolume, PlanEntries::withBucketVolume)),
                        form.typed(
                                "field.tolerance",
                                Fields.TOLERANCE,
                                "/rate/plan/tolerance",
                                PLAN.then(PlanEntries::tolerance, PlanEntries::withTolerance))),
                new FigureRow(form, () -> figures(form.words(), plan())));
    }

    /** The plan as figures, in the order in which they are used. */
    static List<FigureRow.Figure> figures(Sentences words, @Nullable RatePlan plan) {
        List<FigureRow.Figure> figures = new ArrayList<>();
        if (plan == null) {
            return figures;
        }
        add(figures, words, "rate.figure.product", plan.productKgPerHa(), 0, Unit.KG_PER_HA);
        add(figures, words, "rate.figure.nitrogen", plan.nitrogenKgPerHa(), 0, Unit.KG_PER_HA);
        add(figures, words, "rate.figure.units", plan.unitsPerAcre(), 0, Unit.NONE);
        add(figures, words, "rate.figure.tonnes", plan.productTonnes(), 1, Unit.T);
        if (plan.bags() != null && plan.bagsToOrder() != null) {
            figures.add(new FigureRow.Figure(
                    words.text("rate.figure.bags"),
                    words.text(
                            "rate.figure.bagsOrder",
                            Arg.number(plan.bags(), 1, Unit.NONE),
                            Arg.number(plan.bagsToOrder(), 0, Unit.NONE))));
        }
        add(figures, words, "rate.figure.haPerBag", plan.haPerBag(), 2, Unit.HA);
        add(figures, words, "rate.figure.loads", plan.hopperLoads(), 1, Unit.NONE);
        add(figures, words, "rate.figure.flow", plan.flowKgPerMin(), 0, Unit.KG_PER_MIN);
        add(figures, words, "rate.figure.outlet", plan.flowPerOutletKgPerMin(), 1, Unit.KG_PER_MIN);
        return figures;
    }

    private static void add(
            List<FigureRow.Figure> figures,
            Sentences words,
            String key,
            @Nullable Double value,
            int decimals,
            Unit unit) {
        if (value != null) {
            figures.add(new FigureRow.Figure(words.text(key), words.number(value, decimals, unit)));
        }
    }

    Node money() {
        return form.group(
                "rate.money",
                form.row(
                        form.typed(
                                "field.price",
                                Fields.PRICE,
                                "/rate/plan/price",
                                PLAN.then(PlanEntries::price, PlanEntries::withPrice)),
                        form.typed(
                                "rate.otherPrice",
                                Fields.PRICE,
                                "/rate/plan/otherPrice",
                                PLAN.then(PlanEntries::otherPrice, PlanEntries::withOtherPrice)),
                        form.typed(
                                "rate.otherNitrogen",
                                Fields.NITROGEN_SHARE,
                                "/rate/plan/otherNitrogen",
                                PLAN.then(PlanEntries::otherNitrogen, PlanEntries::withOtherNitrogen)),
                        form.typed(
                                "field.effectiveness",
                                Fields.EFFECTIVENESS,
                                "/rate/plan/effectiveness",
                                PLAN.then(PlanEntries::effectiveness, PlanEntries::withEffectiveness))),
                new FigureRow(form, () -> money(form.words(), plan())));
    }

    /** Cost, parity and saving, as far as prices were typed. */
    static List<FigureRow.Figure> money(Sentences words, @Nullable RatePlan plan) {
        List<FigureRow.Figure> figures = new ArrayList<>();
        if (plan == null) {
            return figures;
        }
        add(figures, words, "rate.figure.cost", plan.costPerKgN(), 2, Unit.NONE);
        add(figures, words, "rate.figure.otherCost", plan.otherCostPerKgN(), 2, Unit.NONE);
        add(figures, words, "rate.figure.parity", plan.parityPricePerT(), 0, Unit.PER_T);
        if (plan.saving() != null) {
            add(
                    figures,
                    words,
                    plan.saving() < 0 ? "rate.figure.dearer" : "rate.figure.saving",
                    Math.abs(plan.saving()),
                    0,
                    Unit.NONE);
        }
        return figures;
    }
}
