package org.evenfall.wizard;

import java.util.List;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.RatePlan;
import org.evenfall.result.BucketLines;
import org.evenfall.result.RatePlanLines;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.BucketFacts;
import org.evenfall.setup.RateResult;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.BucketPicture;
import org.evenfall.wizard.picture.BucketSequencePicture;
import org.evenfall.wizard.picture.Countdown;
import org.evenfall.wizard.picture.MoneyPicture;
import org.evenfall.wizard.picture.PictureStack;
import org.evenfall.wizard.picture.RunPicture;
import org.evenfall.wizard.picture.SeasonPicture;
import org.evenfall.wizard.picture.SpeedPicture;
import org.evenfall.wizard.step.rate.AmountPrompt;
import org.evenfall.wizard.step.rate.BucketPrompt;
import org.evenfall.wizard.step.rate.FlowPrompt;
import org.evenfall.wizard.step.rate.MoneyPrompt;
import org.evenfall.wizard.step.rate.SpeedPrompt;

/** Step 5: how much, how fast, what it costs, and the bucket. */
final class RateStep implements StepView {

    private final Form form;
    private final Lazy<Pictures> pictures = new Lazy<>(Pictures::new);

    RateStep(Form form) {
        this.form = form;
    }

    @Override
    public Step step() {
        return Step.RATE;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new AmountPrompt(form, () -> pictures.get().season),
                new FlowPrompt(form, () -> pictures.get().run),
                new MoneyPrompt(form, () -> pictures.get().money),
                new SpeedPrompt(form, () -> pictures.get().speed),
                new BucketPrompt(
                        form,
                        () -> pictures.get().bucketTest,
                        index -> pictures.get().show(index)));
    }

    @Override
    public String result() {
        RatePlan plan = form.model().assessment().rate().plan();
        return plan == null ? "" : form.words().number(plan.amounts().productKgPerHa(), 0, Unit.KG_PER_HA);
    }

    /** The pictures of the step, made when the first of them is shown; each follows the setup. */
    private final class Pictures {

        private final SeasonPicture season = new SeasonPicture(form.words());
        private final RunPicture run = new RunPicture(form.words());
        private final MoneyPicture money = new MoneyPicture(form.words());
        private final SpeedPicture speed = new SpeedPicture(form.words());
        private final BucketSequencePicture sequence = new BucketSequencePicture(form.words());
        private final Countdown countdown = new Countdown(form.words(), System::nanoTime);
        private final BucketPicture bucket = new BucketPicture(form.words());
        private final PictureStack bucketTest = new PictureStack(sequence, countdown, bucket);

        Pictures() {
            // the room that is left goes to the drawings of the sequence
            VBox.setVgrow(countdown, Priority.SOMETIMES);
            VBox.setVgrow(bucket, Priority.SOMETIMES);
            form.follow(this::show);
        }

        private void show() {
            Assessment assessment = form.model().assessment();
            RateResult rate = assessment.rate();
            RatePlan plan = rate.plan();
            season.show(plan == null ? null : plan.amounts(), rate.nitrogenSplits());
            run.show(plan, assessment.tramlineWidthM());
            money.show(plan == null ? null : plan.money(), RatePlanLines.against(form.words(), rate.againstOther()));
            speed.show(
                    new ReadNumbers(assessment.read()).of(RatePaths.RUN_DISTANCE, RatePaths.SPEED_RUNS.item(0)),
                    rate.speed(),
                    plan == null ? null : plan.flow().speedKmPerH());
        }

        /** The bucket test on the page, in the pictures next to it. */
        private void show(int index) {
            Assessment assessment = form.model().assessment();
            BucketFacts facts = BucketFacts.of(assessment, index);
            sequence.show(facts, assessment.machine().rateSetting());
            countdown.set(
                    facts.timed() || facts.expected() == null
                            ? null
                            : Double.valueOf(facts.expected().seconds()),
                    BucketLines.timing(form.words(), facts));
            bucket.show(facts.expected(), facts.timed(), assessment.rate().bucketTests());
        }
    }
}
