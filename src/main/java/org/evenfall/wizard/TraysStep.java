package org.evenfall.wizard;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.sheet.SheetPart;
import org.evenfall.trays.Uniformity;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.step.trays.BeforeDrivingPrompt;
import org.evenfall.wizard.step.trays.CatchesPrompt;
import org.evenfall.wizard.step.trays.ComparePrompt;
import org.evenfall.wizard.step.trays.EdgesPrompt;
import org.evenfall.wizard.step.trays.LongPassPrompt;
import org.evenfall.wizard.step.trays.OtherSetups;
import org.evenfall.wizard.step.trays.PlacesPrompt;
import org.evenfall.wizard.step.trays.TrayTests;
import org.evenfall.wizard.step.trays.VerdictPrompt;

/** Step 6: the tray test, before, while and after. */
final class TraysStep implements StepView {

    private final Form form;
    private final WizardContext context;
    private final SetupDocument document;
    private final SheetWriter sheets;
    private final TrayTests tests;
    private final Lazy<TraysPictures> pictures;

    TraysStep(Form form, WizardContext context, SetupDocument document, SheetWriter sheets) {
        this.form = form;
        this.context = context;
        this.document = document;
        this.sheets = sheets;
        this.tests = new TrayTests(form);
        this.pictures = new Lazy<>(() -> new TraysPictures(form, tests));
    }

    @Override
    public Step step() {
        return Step.TRAYS;
    }

    @Override
    public List<Prompt> prompts() {
        DocumentNavigation navigation = new DocumentNavigation(document);
        return List.of(
                new PlacesPrompt(
                        form, () -> pictures.get().places(), () -> sheets.write(form.model(), SheetPart.FIELD)),
                new BeforeDrivingPrompt(form, () -> pictures.get().passes(), tests),
                new CatchesPrompt(
                        form,
                        () -> pictures.get().catchBars(),
                        tests,
                        navigation,
                        tray -> pictures.get().typing(tray)),
                new VerdictPrompt(form, () -> pictures.get().verdict(), tests, navigation),
                new LongPassPrompt(form, () -> pictures.get().longPass()),
                new ComparePrompt(form, new Others()),
                new EdgesPrompt(form, () -> pictures.get().switching()));
    }

    @Override
    public String result() {
        Uniformity last = form.model().assessment().trays().lastEvenness();
        return last == null
                ? ""
                : form.words().text("trays.cvShort", Arg.number(last.field().medianPercent(), 0, Unit.PERCENT));
    }

    /** Setups opened or saved before. */
    private final class Others implements OtherSetups {

        @Override
        public List<Path> files() {
            return document.recent();
        }

        @Override
        public String name(Path file) {
            return document.name(file);
        }

        @Override
        public Optional<Assessment> assessed(Path file) {
            return document.preview(file).map(context.assess());
        }
    }
}
