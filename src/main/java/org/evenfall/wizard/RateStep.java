package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Typed;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.UnitsBasis;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.PlanEntries;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.entry.RateEntries;
import org.evenfall.setup.entry.SpeedRunEntry;
import org.evenfall.wizard.picture.BucketPicture;

/** Step 5: the plan, the speed, the bucket. */
final class RateStep implements StepView {

    private static final Lens<PlanEntries> PLAN = Places.PLAN;

    private final Form form;
    private final BucketPicture picture;

    RateStep(Form form) {
        this.form = form;
        this.picture = new BucketPicture(form.words());
        form.follow(() -> picture.show(
                form.model().assessment().rate().plan(),
                form.model().assessment().rate().bucketTests()));
    }

    @Override
    public Step step() {
        return Step.RATE;
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public String result() {
        RatePlan plan = form.model().assessment().rate().plan();
        return plan == null ? "" : form.words().number(plan.productKgPerHa(), 0, Unit.KG_PER_HA);
    }

    @Override
    public Node entries() {
        return new VBox(plan(), money(), speed(), buckets(), hopper());
    }

    private Node plan() {
        Label result = resultLine();
        form.follow(() -> result.setText(planTold()));
        return form.group(
                "rate.plan",
                form.choice(
                        "rate.basis",
                        "/rate/plan/basis",
                        PLAN.then(PlanEntries::basis, PlanEntries::withBasis),
                        Form.answers(RateBasis.class)),
                form.row(
                        form.typed(
                                "field.nitrogenRate",
                                Fields.NITROGEN_RATE,
                                "/rate/plan/nitrogenRate",
                                PLAN.then(PlanEntries::nitrogenRate, PlanEntries::withNitrogenRate)),
                        form.typed(
                                "field.productRate",
                                Fields.PRODUCT_RATE,
                                "/rate/plan/productRate",
                                PLAN.then(PlanEntries::productRate, PlanEntries::withProductRate)),
                        form.choice(
                                "rate.unit",
                                "/rate/plan/unitsBasis",
                                PLAN.then(PlanEntries::unitsBasis, PlanEntries::withUnitsBasis),
                                Form.answers(UnitsBasis.class))),
                form.row(
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
                result);
    }

    private String planTold() {
        RatePlan plan = form.model().assessment().rate().plan();
        if (plan == null) {
            return "";
        }
        List<String> lines = new ArrayList<>();
        lines.add(form.words()
                .text(
                        "rate.planResult",
                        Arg.number(plan.productKgPerHa(), 0, Unit.KG_PER_HA),
                        Arg.number(plan.nitrogenKgPerHa(), 0, Unit.KG_PER_HA)));
        if (plan.productTonnes() != null && plan.bags() != null && plan.bagsToOrder() != null) {
            lines.add(form.words()
                    .text(
                            "rate.bagsResult",
                            Arg.number(plan.productTonnes(), 1, Unit.T),
                            Arg.number(plan.bags(), 1, Unit.NONE),
                            Arg.number(plan.bagsToOrder(), 0, Unit.NONE)));
        }
        if (plan.hopperLoads() != null) {
            lines.add(form.words().text("rate.loads", Arg.number(plan.hopperLoads(), 1, Unit.NONE)));
        }
        if (plan.flowKgPerMin() != null && plan.flowPerOutletKgPerMin() != null) {
            lines.add(form.words()
                    .text(
                            "rate.flowResult",
                            Arg.number(plan.flowKgPerMin(), 0, Unit.KG_PER_MIN),
                            Arg.number(plan.flowPerOutletKgPerMin(), 1, Unit.KG_PER_MIN)));
        }
        if (plan.firstOpening() != null) {
            lines.add(form.words().text("rate.firstOpening", Arg.number(plan.firstOpening(), 1, Unit.NONE)));
        }
        return String.join(" ", lines);
    }

    private Node money() {
        Label result = resultLine();
        form.follow(() -> {
            RatePlan plan = form.model().assessment().rate().plan();
            result.setText(
                    plan == null
                                    || plan.costPerKgN() == null
                                    || plan.otherCostPerKgN() == null
                                    || plan.parityPricePerT() == null
                            ? ""
                            : form.words()
                                    .text(
                                            "rate.moneyResult",
                                            Arg.number(plan.costPerKgN(), 2, Unit.NONE),
                                            Arg.number(plan.otherCostPerKgN(), 2, Unit.NONE),
                                            Arg.number(plan.parityPricePerT(), 0, Unit.PER_T)));
        });
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
                result);
    }

    private Node speed() {
        Label result = resultLine();
        form.follow(() -> {
            var speed = form.model().assessment().rate().speed();
            result.setText(
                    speed == null
                            ? ""
                            : form.words().text("rate.speedResult", Arg.number(speed.meanKmPerH(), 1, Unit.KM_PER_H)));
        });
        return form.group(
                "rate.speedTitle",
                new Rows<>(
                                form,
                                Places.RATE.then(RateEntries::speedRuns, RateEntries::withSpeedRuns),
                                SpeedRunEntry.EMPTY,
                                "/rate/speedRuns",
                                true,
                                List.of(
                                        Rows.typed(
                                                form,
                                                form.words().text("field.distance"),
                                                Fields.DISTANCE,
                                                "distance",
                                                SpeedRunEntry::distance,
                                                SpeedRunEntry::withDistance),
                                        Rows.typed(
                                                form,
                                                form.words().text("field.runTime"),
                                                Fields.RUN_TIME,
                                                "time",
                                                SpeedRunEntry::time,
                                                SpeedRunEntry::withTime)))
                        .node(),
                result);
    }

    private Node buckets() {
        Label result = resultLine();
        result.getStyleClass().add("next");
        form.follow(() -> result.setText(nextOpening()));
        return form.group(
                "rate.bucketTitle",
                form.sentence("rate.bucketHow"),
                new Rows<>(
                                form,
                                Places.RATE.then(RateEntries::bucketTests, RateEntries::withBucketTests),
                                BucketEntry.EMPTY,
                                "/rate/bucketTests",
                                true,
                                List.of(
                                        Rows.typed(
                                                form,
                                                form.words().text("rate.openingLeft"),
                                                Fields.OPENING,
                                                "openingLeft",
                                                BucketEntry::openingLeft,
                                                BucketEntry::withOpeningLeft),
                                        Rows.typed(
                                                form,
                                                form.words().text("rate.openingRight"),
                                                Fields.OPENING,
                                                "openingRight",
                                                BucketEntry::openingRight,
                                                BucketEntry::withOpeningRight),
                                        Rows.typed(
                                                form,
                                                form.words().text("rate.time"),
                                                Fields.BUCKET_TIME,
                                                "time",
                                                BucketEntry::time,
                                                BucketEntry::withTime),
                                        Rows.typed(
                                                form,
                                                form.words().text("rate.empty"),
                                                Fields.BUCKET_EMPTY,
                                                "bucketEmpty",
                                                BucketEntry::bucketEmpty,
                                                BucketEntry::withBucketEmpty),
                                        catches("left", 0),
                                        catches("left", 1),
                                        catches("right", 0),
                                        catches("right", 1)))
                        .node(),
                result);
    }

    private Rows.Column<BucketEntry> catches(String side, int repeat) {
        boolean left = side.equals("left");
        String header = form.words().text(left ? "rate.left" : "rate.right", Arg.count(repeat + 1L));
        return Rows.typed(
                form,
                header,
                Fields.BUCKET_MASS,
                side + "/" + repeat,
                entry -> at(left ? entry.left() : entry.right(), repeat),
                (entry, value) -> left
                        ? entry.withLeft(with(entry.left(), repeat, value))
                        : entry.withRight(with(entry.right(), repeat, value)));
    }

    private static Typed at(List<Typed> list, int index) {
        return index < list.size() ? list.get(index) : Typed.EMPTY;
    }

    private static List<Typed> with(List<Typed> list, int index, Typed value) {
        List<Typed> copy = new ArrayList<>(list);
        while (copy.size() <= index) {
            copy.add(Typed.EMPTY);
        }
        copy.set(index, value);
        return copy;
    }

    private String nextOpening() {
        List<BucketResult> tests = form.model().assessment().rate().bucketTests();
        if (tests.isEmpty()) {
            return "";
        }
        BucketResult last = tests.get(tests.size() - 1);
        if (last.withinTolerance()) {
            return form.words().text("rate.within");
        }
        if (last.nextOpeningLeft() == null || last.nextOpeningRight() == null || last.nextFrom() == null) {
            return last.deviationPercent() == null ? "" : form.words().text("rate.noOpening");
        }
        return form.words()
                .text(
                        "rate.next",
                        Arg.number(last.nextOpeningLeft(), 1, Unit.NONE),
                        Arg.number(last.nextOpeningRight(), 1, Unit.NONE),
                        Arg.word("choice.OpeningSource." + last.nextFrom()));
    }

    private Node hopper() {
        return form.group(
                "rate.hopperTitle",
                form.row(
                        form.typed(
                                "field.hopperUsed",
                                Fields.HOPPER_USED,
                                "/rate/hopperUsed",
                                Places.RATE.then(RateEntries::hopperUsed, RateEntries::withHopperUsed)),
                        form.typed(
                                "rate.areaDone",
                                Fields.AREA,
                                "/rate/areaDone",
                                Places.RATE.then(RateEntries::areaDone, RateEntries::withAreaDone))));
    }

    private static Label resultLine() {
        Label result = new Label();
        result.setWrapText(true);
        result.getStyleClass().add("figure-line");
        return result;
    }
}
