package org.evenfall.wizard;

import javafx.scene.Node;
import javafx.scene.control.Label;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.RatePlan;
import org.evenfall.result.RatePlanLines;
import org.evenfall.setup.entry.PlanEntries;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.SourceLine;
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
        PlanEntries typed = form.model().setup().rate().plan();
        return (!byProduct() && typed.nitrogenRate().unit() == Unit.UNITS)
                || typed.nitrogenSplits().stream().anyMatch(split -> split.unit() == Unit.UNITS);
    }

    Node amounts() {
        return form.group(
                "rate.plan",
                form.choice(RatePaths.BASIS),
                form.row(
                        VisibleWhen.when(form, () -> !byProduct(), form.quantity(RatePaths.NITROGEN_RATE)),
                        VisibleWhen.when(form, this::inUnits, form.choice(RatePaths.UNITS_BASIS)),
                        VisibleWhen.when(form, this::byProduct, form.quantity(RatePaths.PRODUCT_RATE)),
                        form.quantity(RatePaths.SPEED),
                        form.quantity(RatePaths.AREA),
                        form.quantity(RatePaths.BAG_MASS),
                        form.quantity(RatePaths.HOPPER_VOLUME),
                        form.quantity(RatePaths.BUCKET_VOLUME),
                        form.quantity(RatePaths.TOLERANCE)),
                FigureRow.of(form, () -> RatePlanLines.figures(form.words(), plan())),
                SourceLine.when(form, this::hasBand, "source.rateTolerance"));
    }

    private boolean hasBand() {
        RatePlan plan = plan();
        return plan != null && plan.bucket().toleranceKg() != null;
    }

    /** The nitrogen of the whole season, which local limits count. */
    Node season() {
        return form.group(
                "rate.season",
                form.sentence("rate.seasonHow"),
                EntryTable.values(form, RatePaths.NITROGEN_SPLITS).node(),
                FigureRow.of(
                        form,
                        () -> RatePlanLines.season(
                                form.words(), form.model().assessment().rate().nitrogenSplits())));
    }

    Node money() {
        return form.group(
                "rate.money",
                form.row(
                        form.quantity(RatePaths.PRICE),
                        form.quantity(RatePaths.OTHER_PRICE),
                        form.quantity(RatePaths.OTHER_NITROGEN),
                        form.quantity(RatePaths.OTHER_DENSITY)),
                form.sentence("rate.efficiencyHow"),
                form.choice(RatePaths.NITROGEN_EFFICIENCY),
                form.row(form.quantity(RatePaths.EFFECTIVENESS)),
                FigureRow.of(form, () -> RatePlanLines.money(form.words(), plan())),
                against());
    }

    /** Why the opening does not shrink by the ratio of the masses. */
    private Node against() {
        Label line = new Label();
        line.getStyleClass().add("figure-line");
        line.setWrapText(true);
        form.follow(() -> line.setText(RatePlanLines.against(
                form.words(), form.model().assessment().rate().againstOther())));
        return line;
    }
}
