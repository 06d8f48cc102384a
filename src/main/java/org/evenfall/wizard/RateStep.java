package org.evenfall.wizard;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.RatePlan;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.picture.BucketPicture;

/** Step 5: the plan, the speed, the bucket. */
final class RateStep implements StepView {

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
        return plan == null ? "" : form.words().number(plan.amounts().productKgPerHa(), 0, Unit.KG_PER_HA);
    }

    @Override
    public Node entries() {
        RatePlanForm plan = new RatePlanForm(form);
        RateCheckForm check = new RateCheckForm(form);
        return new VBox(
                plan.amounts(),
                plan.season(),
                plan.money(),
                check.speed(),
                check.buckets(),
                check.attempts(),
                check.hopper());
    }
}
