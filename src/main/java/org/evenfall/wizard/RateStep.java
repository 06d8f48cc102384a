package org.evenfall.wizard;

import java.util.List;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.RatePlan;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;
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
    public List<Prompt> prompts() {
        RatePlanForm plan = new RatePlanForm(form);
        RateCheckForm check = new RateCheckForm(form);
        return List.of(
                new GroupPrompt("5a", () -> new VBox(plan.amounts(), plan.season()), picture),
                new GroupPrompt("5c", plan::money, picture),
                new GroupPrompt("5d", check::speed, picture, true),
                new GroupPrompt(
                        "5e", () -> new VBox(check.buckets(), check.attempts(), check.hopper()), picture, true));
    }

    @Override
    public String result() {
        RatePlan plan = form.model().assessment().rate().plan();
        return plan == null ? "" : form.words().number(plan.amounts().productKgPerHa(), 0, Unit.KG_PER_HA);
    }
}
