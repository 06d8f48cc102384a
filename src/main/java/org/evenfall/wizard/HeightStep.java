package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lazy;
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
    private final Lazy<Pictures> pictures = new Lazy<>(Pictures::new);

    HeightStep(Form form) {
        this.form = form;
    }

    @Override
    public Step step() {
        return Step.HEIGHT;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new CropPrompt(form, () -> pictures.get().crop),
                new SetHeightPrompt(form, () -> pictures.get().tape),
                new ChainPrompt(form, () -> pictures.get().chain));
    }

    @Override
    public String result() {
        HeightResult height = form.model().assessment().height();
        return height == null ? "" : form.words().number(100 * height.overGroundM(), 0, Unit.CM);
    }

    /** The pictures of the step, made when the first of them is shown; each follows the setup. */
    private final class Pictures {

        private final CropPicture crop = new CropPicture(form.words());
        private final HeightPicture tape = new HeightPicture(form.words());
        private final ChainPicture chain = new ChainPicture(form.words());

        Pictures() {
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
    }
}
