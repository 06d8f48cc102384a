package org.evenfall.wizard;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TraysResult;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.sheet.SheetPart;
import org.evenfall.trays.Uniformity;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.CvPicture;
import org.evenfall.wizard.picture.PictureStack;
import org.evenfall.wizard.picture.TrayBarsPicture;
import org.evenfall.wizard.picture.TrayPlanPicture;

/** Step 6: the tray test, before, while and after. */
final class TraysStep implements StepView {

    private final Form form;
    private final SheetWriter sheets;
    private final WizardContext context;
    private final SetupDocument document;
    private final PictureStack picture;

    TraysStep(Form form, WizardContext context, SetupDocument document, SheetWriter sheets) {
        this.sheets = sheets;
        this.form = form;
        this.context = context;
        this.document = document;
        TrayPlanPicture plan = new TrayPlanPicture(form.words());
        TrayBarsPicture bars = new TrayBarsPicture(form.words());
        CvPicture cv = new CvPicture(form.words());
        this.picture = new PictureStack(plan, bars, cv);
        form.follow(() -> {
            TraysResult trays = form.model().assessment().trays();
            plan.show(trays.layout());
            bars.show(trays.comparable());
            cv.show(trays.comparable(), trays.advice());
        });
    }

    @Override
    public Step step() {
        return Step.TRAYS;
    }

    @Override
    public List<Prompt> prompts() {
        TraysBeforeForm before = new TraysBeforeForm(form);
        TraysOutcome outcome = new TraysOutcome(form);
        return List.of(
                new GroupPrompt(
                        "6a", () -> new VBox(before.trays(), before.ground(), form.row(fieldSheet())), picture, true),
                new GroupPrompt("6c", new TrayTestForm(form)::tests, picture, true),
                new GroupPrompt("6d", () -> new VBox(outcome.result(), outcome.advice()), picture),
                new GroupPrompt("6e", new SinglePassForm(form)::node, picture),
                new GroupPrompt("6f", new TestComparisonForm(form, context, document)::node, picture),
                new GroupPrompt("6g", this::edges, picture));
    }

    private Node fieldSheet() {
        return form.button("sheet.printField", () -> sheets.write(form.model(), SheetPart.FIELD));
    }

    @Override
    public String result() {
        Uniformity last = form.model().assessment().trays().lastEvenness();
        return last == null
                ? ""
                : form.words().text("trays.cvShort", Arg.number(last.field().medianPercent(), 0, Unit.PERCENT));
    }

    private Node edges() {
        return form.group(
                "trays.edges",
                form.sentence("trays.edgesHow"),
                form.row(
                        form.text(TrayPaths.BORDER_DEVICE),
                        form.choice(TrayPaths.BORDER_SIDE),
                        form.quantity(TrayPaths.SWITCH_ON),
                        form.quantity(TrayPaths.SWITCH_OFF)),
                form.sentence("trays.switchHow"));
    }
}
