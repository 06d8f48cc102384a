package org.evenfall.wizard;

import java.util.List;
import java.util.stream.IntStream;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.VaneCheck;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.PtoWanted;
import org.evenfall.setup.entry.VaneEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.LevelPicture;
import org.evenfall.wizard.picture.MachineCheckPicture;
import org.evenfall.wizard.picture.PtoPicture;
import org.evenfall.wizard.picture.VanePicture;
import org.evenfall.wizard.step.machine.LevelPrompt;
import org.evenfall.wizard.step.machine.PtoPrompt;
import org.evenfall.wizard.step.machine.PutRightPrompt;
import org.evenfall.wizard.step.machine.VanesPrompt;
import org.evenfall.wizard.step.machine.WalkPrompt;

/** Step 3: the machine looked over in the yard, in the order in which one walks round it. */
final class MachineCheckStep implements StepView {

    private final Form form;
    private final Lazy<Pictures> pictures = new Lazy<>(Pictures::new);

    MachineCheckStep(Form form) {
        this.form = form;
    }

    private static VanePicture.Vane vane(ReadNumbers read, VaneCheck vane, EntryPath<VaneEntry> row) {
        return new VanePicture.Vane(
                vane.side(),
                vane.label(),
                read.of(MachineCheckPaths.VANE_LENGTH, row),
                read.of(MachineCheckPaths.VANE_LENGTH_NEW, row),
                vane.failed());
    }

    @Override
    public Step step() {
        return Step.MACHINE;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new WalkPrompt(form, () -> pictures.get().walk),
                new VanesPrompt(form, () -> pictures.get().vanes),
                new LevelPrompt(form, () -> pictures.get().level),
                new PtoPrompt(form, () -> pictures.get().pto),
                new PutRightPrompt(form, () -> pictures.get().walk));
    }

    @Override
    public String result() {
        MachineCheckResult machineCheck = form.model().assessment().machineCheck();
        return machineCheck.ptoRpm() == null ? "" : form.words().number(machineCheck.ptoRpm(), 0, Unit.RPM);
    }

    /** The pictures of the step, made when the first of them is shown; each follows the setup. */
    private final class Pictures {

        private final MachineCheckPicture walk = new MachineCheckPicture(form.words());
        private final VanePicture vanes = new VanePicture(form.words());
        private final LevelPicture level = new LevelPicture(form.words());
        private final PtoPicture pto = new PtoPicture(form.words());

        Pictures() {
            form.follow(this::show);
        }

        private void show() {
            Assessment assessment = form.model().assessment();
            ReadNumbers read = new ReadNumbers(assessment.read());
            MachineCheckResult result = assessment.machineCheck();
            walk.show(result);
            vanes.show(IntStream.range(0, result.vanes().size())
                    .mapToObj(i -> vane(read, result.vanes().get(i), MachineCheckPaths.VANES.item(i)))
                    .toList());
            level.show(new LevelPicture.Measured(
                    read.of(MachineCheckPaths.HEIGHT_LEFT),
                    read.of(MachineCheckPaths.HEIGHT_RIGHT),
                    read.of(MachineCheckPaths.TILT),
                    read.of(MachineCheckPaths.TYRE_LEFT),
                    read.of(MachineCheckPaths.TYRE_RIGHT)));
            pto.show(
                    result.ptoRpm(),
                    PtoWanted.rpm(assessment),
                    assessment.machine().ptoLowestRpm(),
                    assessment.machine().ptoHighestRpm());
        }
    }
}
