package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.quantity.Unit;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.MachineCheckPicture;
import org.evenfall.wizard.step.machine.LevelPrompt;
import org.evenfall.wizard.step.machine.PtoPrompt;
import org.evenfall.wizard.step.machine.PutRightPrompt;
import org.evenfall.wizard.step.machine.VanesPrompt;
import org.evenfall.wizard.step.machine.WalkPrompt;

/** Step 3: the machine looked over in the yard, in the order in which one walks round it. */
final class MachineCheckStep implements StepView {

    private final Form form;
    private final MachineCheckPicture picture;

    MachineCheckStep(Form form) {
        this.form = form;
        this.picture = new MachineCheckPicture(form.words());
        form.follow(() -> picture.show(form.model().assessment().machineCheck()));
    }

    @Override
    public Step step() {
        return Step.MACHINE;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new WalkPrompt(form, picture),
                new VanesPrompt(form, picture),
                new LevelPrompt(form, picture),
                new PtoPrompt(form, picture),
                new PutRightPrompt(form, picture));
    }

    @Override
    public String result() {
        MachineCheckResult machineCheck = form.model().assessment().machineCheck();
        return machineCheck.ptoRpm() == null ? "" : form.words().number(machineCheck.ptoRpm(), 0, Unit.RPM);
    }
}
