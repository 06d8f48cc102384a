package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.ChainPicture;
import org.evenfall.wizard.picture.CropPicture;
import org.evenfall.wizard.picture.HeightPicture;
import org.evenfall.wizard.step.height.ChainPrompt;
import org.evenfall.wizard.step.height.CropPrompt;
import org.evenfall.wizard.step.height.SetHeightPrompt;

/** Step 4: height over the top of the crop. */
final class HeightStep implements StepView {

    private final Form form;
    private final CropPicture crop;
    private final HeightPicture tape;
    private final ChainPicture chain;

    HeightStep(Form form) {
        this.form = form;
        this.crop = new CropPicture(form.words());
        this.tape = new HeightPicture(form.words());
        this.chain = new ChainPicture(form.words());
        form.follow(this::show);
    }

    private void show() {
        HeightResult height = form.model().assessment().height();
        crop.show(
                new ReadNumbers(form.model().assessment().read()).of(HeightPaths.CROP_HEIGHTS),
                height == null ? null : height.crop());
        tape.show(height, form.model().setup().height().referencePoint());
        chain.show(height);
    }

    @Override
    public Step step() {
        return Step.HEIGHT;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(new CropPrompt(form, crop), new SetHeightPrompt(form, tape), new ChainPrompt(form, chain));
    }

    @Override
    public String result() {
        HeightResult height = form.model().assessment().height();
        return height == null ? "" : form.words().number(100 * height.overGroundM(), 0, Unit.CM);
    }
}
