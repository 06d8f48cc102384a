package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.StartPicture;
import org.evenfall.wizard.step.start.DiscsPrompt;
import org.evenfall.wizard.step.start.JobPrompt;
import org.evenfall.wizard.step.start.KitPrompt;
import org.evenfall.wizard.step.start.LeversPrompt;
import org.evenfall.wizard.step.start.MachinePrompt;
import org.evenfall.wizard.step.start.OpeningTablePrompt;
import org.evenfall.wizard.step.start.RateSettingPrompt;

/** Step 0: begin, go on or open again; the job and the machine. */
final class StartStep implements StepView {

    private final Form form;
    private final SetupDocument document;
    private final RecentSetups recent;
    private final StartPicture picture;

    StartStep(Form form, SetupDocument document, RecentSetups recent) {
        this.recent = recent;
        this.form = form;
        this.document = document;
        this.picture = new StartPicture(form.words());
        form.follow(() -> picture.show(form.model().assessment().tramlineWidthM()));
    }

    @Override
    public Step step() {
        return Step.START;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new HomePrompt(form, picture, document, recent),
                new JobPrompt(form, picture),
                new MachinePrompt(form, picture, document),
                new DiscsPrompt(form, picture, document),
                new RateSettingPrompt(form, picture, document),
                new LeversPrompt(form, picture, document),
                new OpeningTablePrompt(form, picture, document),
                new KitPrompt(form, picture));
    }

    @Override
    public String result() {
        Double width = form.model().assessment().tramlineWidthM();
        String farm = form.model().setup().start().farm();
        return width == null ? farm : farm + " · " + form.words().number(width, 0, Unit.M);
    }
}
