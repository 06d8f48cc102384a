package org.evenfall.wizard;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.page.NoPrinter;
import org.evenfall.result.CardLines;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.CardResult;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.sign.KeyException;
import org.evenfall.wizard.form.FindingView;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lines;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.VisibleWhen;
import org.evenfall.wizard.picture.CardPreview;

/** Step 7: the card. The preview is the page itself; it is drawn, signed and printed off the window's thread. */
final class CardStep implements StepView {

    private final Form form;
    private final WizardContext context;
    private final SetupDocument document;
    private final CardPreview preview;
    private final ScrollPane picture;
    private final CardWork work;
    private final KeyForm keyForm;
    private final CheckAnswersForm check;
    private final CheckForm checkForm;
    private boolean front;

    CardStep(Form form, WizardContext context, SetupDocument document) {
        this.form = form;
        this.context = context;
        this.document = document;
        this.preview = new CardPreview(form.words());
        this.picture = new ScrollPane(preview);
        this.work = new CardWork(context, this::failed);
        this.check = new CheckAnswersForm(form.words(), document);
        this.checkForm = new CheckForm(form, context, work);
        this.keyForm = new KeyForm(form, context, work, () -> {
            document.frame().showNotice("");
            keyChanged();
        });
        picture.setFitToWidth(true);
        picture.getStyleClass().add("preview");
        form.follow(this::draw);
    }

    @Override
    public Step step() {
        return Step.CARD;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new CardPrompt("7a", () -> check),
                new CardPrompt("7b", () -> new VBox(who(), sheet())),
                new CardPrompt("7c", () -> new VBox(sign(), keyForm.node(), checkForm.node())));
    }

    /** A prompt next to the preview of the card. */
    private final class CardPrompt implements Prompt {

        private final String id;
        private final Supplier<Node> made;

        CardPrompt(String id, Supplier<Node> made) {
            this.id = id;
            this.made = made;
        }

        @Override
        public String id() {
            return id;
        }

        @Override
        public boolean findingsAtEntries() {
            return false;
        }

        @Override
        public Node entries() {
            return made.get();
        }

        @Override
        public Node picture() {
            return picture;
        }

        @Override
        public void shown() {
            CardStep.this.shown();
            if (id.equals("7a")) {
                check.refresh();
            }
        }
    }

    @Override
    public String result() {
        boolean allowed = form.model().assessment().card().cardAllowed();
        return allowed ? form.words().text("card.ready") : "";
    }

    private void shown() {
        front = true;
        draw();
        keyForm.refresh();
    }

    private Node who() {
        return form.group(
                "card.who",
                form.row(
                        form.text(CardPaths.MEASURED_BY),
                        form.text(CardPaths.SIGNED_BY),
                        form.text(CardPaths.ROLE),
                        form.text(CardPaths.DATE)));
    }

    private Node sheet() {
        return form.group(
                "card.sheet",
                form.choice(CardPaths.PAPER),
                form.choice(CardPaths.LANGUAGE),
                form.row(form.quantity(CardPaths.WIND_STOP), form.text(CardPaths.REMARKS)),
                VisibleWhen.when(
                        form,
                        () -> form.model().assessment().card().unevenPercent() != null,
                        form.text(CardPaths.UNEVEN_REASON)));
    }

    private Node sign() {
        VBox open = new VBox();
        open.getStyleClass().add("attempts");
        Button make = form.button("card.make", this::make);
        make.getStyleClass().add("primary");
        Button show = form.button("card.makeAndOpen", this::makeAndOpen);
        Button print = form.button("card.print", this::print);
        form.follow(() -> {
            boolean may = mayBeMade();
            make.setDisable(!may);
            show.setDisable(!may);
            print.setDisable(!may);
        });
        Lines.of(form, open, () -> mayBeMade() ? List.of() : open(form.model().assessment()), this::linkToStep);
        return form.group(
                "card.sign",
                VisibleWhen.sentence(form, "figure-line", this::state),
                open,
                form.sentence("card.signWhy"),
                form.row(
                        make,
                        show,
                        print,
                        form.button("card.folder", () -> context.reveal().accept(work.folder()))));
    }

    private boolean mayBeMade() {
        CardResult card = form.model().assessment().card();
        return card.cardAllowed() || card.findingOnly();
    }

    private String state() {
        return CardLines.state(form.words(), form.model().assessment().card());
    }

    /** What keeps this setup from a card: all that stops, then all that is missing, in the order of the steps. */
    static List<Finding> open(Assessment assessment) {
        return CardLines.open(assessment);
    }

    /** A button for something open, which brings its step to the front. */
    private Button linkToStep(Finding finding) {
        Button link = new Button(
                form.words().choice(finding.step()) + ": " + form.words().of(finding));
        link.setGraphic(FindingView.mark(finding.kind()));
        link.setWrapText(true);
        link.getStyleClass().add("lead");
        link.setOnAction(event -> document.frame().go(finding.step()));
        return link;
    }

    /** Draws the preview anew when this step is in front. */
    private void draw() {
        if (front) {
            work.draw(
                    form.model().setup(),
                    form.model().assessment(),
                    preview::show,
                    problem -> document.frame()
                            .showNotice(form.words().text("card.noPreview", Arg.text(reason(problem)))));
        }
    }

    private void make() {
        context.choose()
                .apply(freeName())
                .ifPresent(file -> work.write(form.model().setup(), form.model().assessment(), file, code -> {
                    written(file.toString(), code);
                }));
    }

    private void makeAndOpen() {
        Path file = freeName();
        work.write(form.model().setup(), form.model().assessment(), file, code -> {
            written(file.toString(), code);
            context.reveal().accept(file);
        });
    }

    private Path freeName() {
        return work.freeName(
                form.model().setup(), form.model().assessment().card().findingOnly());
    }

    private void written(String file, String code) {
        document.frame().showNotice(form.words().text("card.written", Arg.text(file), Arg.text(code)));
        keyForm.refresh();
        keyChanged();
    }

    private void print() {
        work.print(form.model().setup(), form.model().assessment(), done -> {
            document.frame().showNotice(form.words().text(done ? "card.printed" : "card.notPrinted"));
            keyForm.refresh();
        });
    }

    private void keyChanged() {
        checkForm.list();
        draw();
    }

    private void failed(Throwable problem) {
        if (problem instanceof KeyException trouble) {
            document.frame().showNotice(form.words().choice(trouble.kind()));
            keyForm.refresh();
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
