package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Unit;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.HeightPicture;
import org.evenfall.wizard.step.height.ChainPrompt;
import org.evenfall.wizard.step.height.CropPrompt;
import org.evenfall.wizard.step.height.SetHeightPrompt;

/** Step 4: height over the top of the crop. */
final class HeightStep implements StepView {

    private final Form form;
    private final HeightPicture picture;

    HeightStep(Form form) {
        this.form = form;
        this.picture = new HeightPicture(form.words());
        form.follow(() -> picture.show(
                form.model().assessment().height(),
                form.model().setup().height().referencePoint()));
    }

    @Override
    public Step step() {
        return Step.HEIGHT;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new CropPrompt(form, picture), new SetHeightPrompt(form, picture), new ChainPrompt(form, picture));
    }

    @Override
    public String result() {
        HeightResult height = form.model().assessment().height();
        return height == null ? "" : form.words().number(100 * height.overGroundM(), 0, Unit.CM);
    }
}
