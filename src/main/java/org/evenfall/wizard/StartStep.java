package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.Unit;
import org.evenfall.sheet.SheetPart;
import org.evenfall.trays.TrayLayout;
import org.evenfall.wizard.form.Form;
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
    private final SetupDocument document;
    private final RecentSetups recent;
    private final RecordWriter records;
    private final SheetWriter sheets;
    private final PassesPicture passes;
    private final DiscsPicture machine;
    private final DiscsPicture discs;
    private final RateSettingPicture rateSetting;
    private final LeversPicture levers;
    private final OpeningTablePicture openings;
    private final KitPicture kit;

    StartStep(Form form, SetupDocument document, RecentSetups recent, RecordWriter records, SheetWriter sheets) {
        this.records = records;
        this.sheets = sheets;
        this.recent = recent;
        this.form = form;
        this.document = document;
        this.passes = new PassesPicture(form.words());
        this.machine = new DiscsPicture(form.words());
        this.discs = new DiscsPicture(form.words());
        this.rateSetting = new RateSettingPicture(form.words());
        this.levers = new LeversPicture(form.words());
        this.openings = new OpeningTablePicture(form.words());
        this.kit = new KitPicture(form.words());
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

    @Override
    public Step step() {
        return Step.START;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new HomePrompt(form, document, recent, records),
                new JobPrompt(form, passes),
                new MachinePrompt(form, machine, document.machines()),
                new DiscsPrompt(form, discs, document.machines()),
                new RateSettingPrompt(form, rateSetting, document.machines()),
                new LeversPrompt(form, levers, document.machines()),
                new OpeningTablePrompt(form, openings, document.machines()),
                new KitPrompt(form, kit, () -> sheets.write(form.model(), SheetPart.YARD)));
    }

    @Override
    public String result() {
        Double width = form.model().assessment().tramlineWidthM();
        String farm = form.model().shown().start().farm();
        return width == null ? farm : farm + " · " + form.words().number(width, 0, Unit.M);
    }
}
