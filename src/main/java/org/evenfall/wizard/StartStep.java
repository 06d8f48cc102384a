package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.Unit;
import org.evenfall.sheet.SheetPart;
import org.evenfall.trays.TrayLayout;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.DiscsPicture;
import org.evenfall.wizard.picture.KitPicture;
import org.evenfall.wizard.picture.LeversPicture;
import org.evenfall.wizard.picture.OpeningTablePicture;
import org.evenfall.wizard.picture.PassesPicture;
import org.evenfall.wizard.picture.RateSettingPicture;
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
    private final Lazy<Pictures> pictures = new Lazy<>(Pictures::new);
    private final SetupDocument document;
    private final RecentSetups recent;
    private final RecordWriter records;
    private final SheetWriter sheets;

    StartStep(Form form, SetupDocument document, RecentSetups recent, RecordWriter records, SheetWriter sheets) {
        this.records = records;
        this.sheets = sheets;
        this.recent = recent;
        this.form = form;
        this.document = document;
    }

    @Override
    public Step step() {
        return Step.START;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new HomePrompt(form, document, recent, records),
                new JobPrompt(form, () -> pictures.get().passes),
                new MachinePrompt(form, () -> pictures.get().machine, document.machines()),
                new DiscsPrompt(form, () -> pictures.get().discs, document.machines()),
                new RateSettingPrompt(form, () -> pictures.get().rateSetting, document.machines()),
                new LeversPrompt(form, () -> pictures.get().levers, document.machines()),
                new OpeningTablePrompt(form, () -> pictures.get().openings, document.machines()),
                new KitPrompt(form, () -> pictures.get().kit, () -> sheets.write(form.model(), SheetPart.YARD)));
    }

    @Override
    public String result() {
        Double width = form.model().assessment().tramlineWidthM();
        String farm = form.model().shown().start().farm();
        return width == null ? farm : farm + " · " + form.words().number(width, 0, Unit.M);
    }

    /** The pictures of the step, made when the first of them is shown; each follows the setup. */
    private final class Pictures {

        private final PassesPicture passes = new PassesPicture(form.words());
        private final DiscsPicture machine = new DiscsPicture(form.words());
        private final DiscsPicture discs = new DiscsPicture(form.words());
        private final RateSettingPicture rateSetting = new RateSettingPicture(form.words());
        private final LeversPicture levers = new LeversPicture(form.words());
        private final OpeningTablePicture openings = new OpeningTablePicture(form.words());
        private final KitPicture kit = new KitPicture(form.words());

        Pictures() {
            form.follow(this::show);
        }

        private void show() {
            Double width = form.model().assessment().tramlineWidthM();
            MachineProfile profile = form.model().assessment().machine();
            passes.show(width, form.model().setup().start().drivingPattern());
            machine.show(profile);
            discs.show(profile);
            rateSetting.show(profile.rateSetting(), profile.factorRule());
            levers.show(profile.levers());
            TrayLayout layout = form.model().assessment().trays().layout();
            kit.show(layout == null ? null : Integer.valueOf(layout.positionsM().size()));
            openings.show(profile.openings(), profile.tableDensityKgPerL());
        }
    }
}
