package org.evenfall.wizard.step.rate;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.quantity.Interval;
import org.evenfall.result.RateSentences;
import org.evenfall.setup.BucketFacts;
import org.evenfall.setup.RateResult;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.ReservedSentence;
import org.jspecify.annotations.Nullable;

/** Speed, area, bag, hopper and bucket: what flows, what to order, what to expect in the bucket. */
public final class FlowPrompt extends FormPrompt {

    /** @param picture of the step */
    public FlowPrompt(Form form, Supplier<? extends Node> picture) {
        super("5b", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(form().quantity(RatePaths.SPEED), form().quantity(RatePaths.AREA)),
                form().row(form().quantity(RatePaths.BAG_MASS), form().quantity(RatePaths.HOPPER_VOLUME)),
                form().row(form().quantity(RatePaths.BUCKET_VOLUME), form().quantity(RatePaths.TOLERANCE)),
                ReservedSentence.of(form(), "figure-line", 1, () -> RateSentences.flow(form().words(), rate().plan())),
                ReservedSentence.of(form(), "figure-line", 2, () -> RateSentences.goods(form().words(), rate().plan())),
                ReservedSentence.of(
                        form(),
                        "figure-line",
                        2,
                        () -> RateSentences.bucket(form().words(), rate().plan(), scalesKg())));
    }

    private RateResult rate() {
        return form().model().assessment().rate();
    }

    /** What the scales read with the bucket of the last test; null while it was not weighed empty. */
    private @Nullable Interval scalesKg() {
        int last = RatePaths.BUCKET_TESTS.path().get(form().model().setup()).size() - 1;
        return BucketFacts.plannedScalesKg(form().model().assessment(), Math.max(0, last));
    }

    @Override
    public Help help() {
        return Help.terms("outlet", "flow").from("source.bucket", "source.heavyBucket", "source.rateTolerance");
    }
}
