package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.RatePlan;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.VisibleWhen;
import org.jspecify.annotations.Nullable;

/** Step 5, the plan: how much, how fast, on what, and what it costs. */
final class RatePlanForm {

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
                form.choice(RatePaths.BASIS),
                form.row(
                        VisibleWhen.when(form, () -> !byProduct(), form.quantity(RatePaths.NITROGEN_RATE)),
                        VisibleWhen.when(form, () -> !byProduct() && inUnits(), form.choice(RatePaths.UNITS_BASIS)),
                        VisibleWhen.when(form, this::byProduct, form.quantity(RatePaths.PRODUCT_RATE)),
                        form.quantity(RatePaths.SPEED),
                        form.quantity(RatePaths.AREA),
                        form.quantity(RatePaths.BAG_MASS),
                        form.quantity(RatePaths.HOPPER_VOLUME),
                        form.quantity(RatePaths.BUCKET_VOLUME),
                        form.quantity(RatePaths.TOLERANCE)),
                new FigureRow(form, () -> figures(form.words(), plan())));
    }

    /** The plan as figures, in the order in which they are used. */
    static List<FigureRow.Figure> figures(Sentences words, @Nullable RatePlan plan) {
        List<FigureRow.Figure> figures = new ArrayList<>();
        if (plan == null) {
            return figures;
        }
        add(figures, words, "rate.figure.product", plan.amounts().productKgPerHa(), 0, Unit.KG_PER_HA);
        add(figures, words, "rate.figure.nitrogen", plan.amounts().nitrogenKgPerHa(), 0, Unit.KG_PER_HA);
        add(figures, words, "rate.figure.units", plan.amounts().unitsPerAcre(), 0, Unit.NONE);
        add(figures, words, "rate.figure.tonnes", plan.logistics().productTonnes(), 1, Unit.T);
        if (plan.logistics().bags() != null && plan.logistics().bagsToOrder() != null) {
            figures.add(new FigureRow.Figure(
                    words.text("rate.figure.bags"),
                    words.text(
                            "rate.figure.bagsOrder",
                            Arg.number(plan.logistics().bags(), 1, Unit.NONE),
                            Arg.number(plan.logistics().bagsToOrder(), 0, Unit.NONE))));
        }
        add(figures, words, "rate.figure.haPerBag", plan.logistics().haPerBag(), 2, Unit.HA);
        add(figures, words, "rate.figure.loads", plan.logistics().hopperLoads(), 1, Unit.NONE);
        add(figures, words, "rate.figure.flow", plan.flow().kgPerMin(), 0, Unit.KG_PER_MIN);
        add(figures, words, "rate.figure.outlet", plan.flow().outletKgPerMin(), 1, Unit.KG_PER_MIN);
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
                        form.quantity(RatePaths.PRICE),
                        form.quantity(RatePaths.OTHER_PRICE),
                        form.quantity(RatePaths.OTHER_NITROGEN),
                        form.quantity(RatePaths.EFFECTIVENESS)),
                new FigureRow(form, () -> money(form.words(), plan())));
    }

    /** Cost, parity and saving, as far as prices were typed. */
    static List<FigureRow.Figure> money(Sentences words, @Nullable RatePlan plan) {
        List<FigureRow.Figure> figures = new ArrayList<>();
        if (plan == null) {
            return figures;
        }
        add(figures, words, "rate.figure.cost", plan.money().costPerKgN(), 2, Unit.NONE);
        add(figures, words, "rate.figure.otherCost", plan.money().otherCostPerKgN(), 2, Unit.NONE);
        add(figures, words, "rate.figure.parity", plan.money().parityPricePerT(), 0, Unit.PER_T);
        if (plan.money().saving() != null) {
            add(
                    figures,
                    words,
                    plan.money().saving() < 0 ? "rate.figure.dearer" : "rate.figure.saving",
                    Math.abs(plan.money().saving()),
                    0,
                    Unit.NONE);
        }
        return figures;
    }
}
