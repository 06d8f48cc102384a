package org.evenfall.wizard;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import javafx.scene.control.ScrollPane;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.page.NoPrinter;
import org.evenfall.publish.KeyTrouble;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sign.KeyException;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.PlainScrollPane;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.CardPreview;
import org.evenfall.wizard.step.card.CardActions;
import org.evenfall.wizard.step.card.PassesPrompt;
import org.evenfall.wizard.step.card.SignPrompt;
import org.evenfall.wizard.step.card.SignedCard;
import org.evenfall.wizard.step.card.WhoPrompt;
import org.jspecify.annotations.Nullable;

/** Step 7: the card. The preview is the page itself; it is drawn, signed and printed off the window's thread. */
final class CardStep implements StepView, CardActions {

    private final Form form;
    private final WizardContext context;
    private final SetupDocument document;
    private final Lazy<CardPreview> preview;
    private final Lazy<ScrollPane> picture;
    private final CardWork work;
    private final Lazy<KeyForm> keyForm;
    private final Lazy<CheckForm> checkForm;
    private final SignPrompt sign;
    private @Nullable SignedCard signed;

    CardStep(Form form, WizardContext context, SetupDocument document) {
        this.form = form;
        this.context = context;
        this.document = document;
        this.preview = new Lazy<>(() -> new CardPreview(form.words(), this::draw));
        this.picture = new Lazy<>(this::scrolled);
        this.work = new CardWork(context, this::failed);
        this.checkForm = new Lazy<>(() -> new CheckForm(form, context, work));
        this.keyForm = new Lazy<>(() -> new KeyForm(form, context, work, () -> {
            document.frame().showNotice("");
            keyChanged();
        }));
        this.sign = new SignPrompt(
                form,
                picture,
                this,
                () -> signed,
                () -> new SignPrompt.Parts(
                        keyForm.get().stateNode(),
                        keyForm.get().options(),
                        checkForm.get().node()),
                this::shown);
        form.follow(this::draw);
    }

    private ScrollPane scrolled() {
        ScrollPane pane = new PlainScrollPane(preview.get());
        pane.setFitToWidth(true);
        pane.getStyleClass().add("preview");
        return pane;
    }

    @Override
    public Step step() {
        return Step.CARD;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new CheckAnswersPrompt(form, picture, document, this::shown),
                new WhoPrompt(form, picture, this::shown),
                sign,
                new PassesPrompt(form));
    }

    @Override
    public String result() {
        boolean allowed = form.model().assessment().card().cardAllowed();
        return allowed ? form.words().text("card.ready") : "";
    }

    private void shown() {
        keyForm.get().refresh();
    }

    /** Draws the preview anew while it is in sight. */
    private void draw() {
        if (preview.ifMade().filter(CardPreview::isInSight).isPresent()) {
            work.draw(
                    form.model().setup(),
                    form.model().assessment(),
                    this::show,
                    problem -> document.frame()
                            .showNotice(form.words().text("card.noPreview", Arg.text(reason(problem)))));
        }
    }

    /** Shows what was drawn; meanwhile the step may have been left. */
    private void show(List<BufferedImage> drawn) {
        if (preview.get().isInSight()) {
            preview.get().show(drawn);
        }
    }

    @Override
    public void make() {
        write(freeName());
    }

    @Override
    public void saveElsewhere() {
        context.choose().apply(freeName()).ifPresent(this::write);
    }

    private void write(Path file) {
        Setup setup = form.model().setup();
        boolean card = !form.model().assessment().card().findingOnly();
        Path setupFile = document.file();
        work.write(setup, form.model().assessment(), file, code -> {
            signed = new SignedCard(file, code, LocalDate.now(context.clock()), setup);
            document.frame().showNotice(form.words().text("card.written", Arg.text(file.toString()), Arg.text(code)));
            sign.showSigned();
            if (card) {
                work.register(
                        file,
                        setupFile,
                        setup,
                        code,
                        problem -> document.frame()
                                .showNotice(form.words().text("card.notRegistered", Arg.text(reason(problem)))));
            }
            keyForm.get().refresh();
            keyChanged();
        });
    }

    private Path freeName() {
        return work.freeName(
                form.model().setup(), form.model().assessment().card().findingOnly());
    }

    @Override
    public void open() {
        SignedCard card = signed;
        if (card != null) {
            context.reveal().accept(card.file());
        }
    }

    @Override
    public void print() {
        work.print(form.model().setup(), form.model().assessment(), done -> {
            document.frame().showNotice(form.words().text(done ? "card.printed" : "card.notPrinted"));
            keyForm.get().refresh();
        });
    }

    @Override
    public void mend(Finding finding) {
        document.frame().mend(finding);
    }

    private void keyChanged() {
        checkForm.get().list();
        draw();
    }

    private void failed(Throwable problem) {
        if (problem instanceof KeyException trouble) {
            document.frame().showNotice(KeyTrouble.sentence(form.words(), trouble));
            keyForm.get().refresh();
        } else if (problem instanceof NoPrinter) {
            document.frame().showNotice(form.words().text("card.noPrinter"));
        } else {
            document.frame().showNotice(form.words().text("card.notWritten", Arg.text(reason(problem))));
        }
    }

    /** What a failure says of itself; its kind where it says nothing. */
    private static String reason(Throwable problem) {
        String message = problem.getMessage();
        return message == null ? problem.getClass().getSimpleName() : message;
    }
}
