package org.evenfall.wizard;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.layout.VBox;
import org.evenfall.card.CardContent;
import org.evenfall.card.CardContents;
import org.evenfall.card.CardMaker;
import org.evenfall.card.CardPdf;
import org.evenfall.card.CardPicture;
import org.evenfall.card.SigningKey;
import org.evenfall.card.SigningKeys;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.CardEntries;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupStore;

/** Step 7: the card. The preview is the page itself; it is drawn and signed off the window's thread. */
final class CardStep implements StepView {

    private static final Lens<CardEntries> CARD = Places.CARD;
    private static final float PREVIEW_DPI = 110;

    private final Form form;
    private final WizardContext context;
    private final Desk desk;
    private final VBox pages = new VBox(12);
    private final ScrollPane picture = new ScrollPane(pages);
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread worker = new Thread(work, "evenfall-card");
        worker.setDaemon(true);
        return worker;
    });
    private boolean front;
    private int asked;

    CardStep(Form form, WizardContext context, Desk desk) {
        this.form = form;
        this.context = context;
        this.desk = desk;
        picture.setFitToWidth(true);
        picture.getStyleClass().add("preview");
        pages.getStyleClass().add("pages");
        form.follow(this::draw);
    }

    @Override
    public Step step() {
        return Step.CARD;
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public String result() {
        boolean allowed = form.model().assessment().card().cardAllowed();
        return allowed ? form.words().text("card.ready") : "";
    }

    @Override
    public void shown() {
        front = true;
        draw();
    }

    @Override
    public Node entries() {
        Label state = new Label();
        state.setWrapText(true);
        state.getStyleClass().add("figure-line");
        VBox missing = new VBox();
        Button make = form.button("card.make", this::make);
        make.getStyleClass().add("primary");
        form.follow(() -> {
            var card = form.model().assessment().card();
            make.setDisable(!card.cardAllowed() && !card.findingOnly());
            state.setText(form.words()
                    .text(card.findingOnly() ? "card.findingOnly" : card.cardAllowed() ? "card.may" : "card.mayNot"));
            missing.getChildren()
                    .setAll(card.missing().stream()
                            .map(key -> {
                                Label line = new Label("– " + form.words().text(key));
                                line.setWrapText(true);
                                return line;
                            })
                            .toList());
        });
        return new VBox(
                form.group(
                        "card.who",
                        form.row(
                                form.text(
                                        "card.measuredByAsk",
                                        "/card/measuredBy",
                                        CARD.then(CardEntries::measuredBy, CardEntries::withMeasuredBy)),
                                form.text(
                                        "card.signedByAsk",
                                        "/card/signedBy",
                                        CARD.then(CardEntries::signedBy, CardEntries::withSignedBy)),
                                form.text(
                                        "card.roleAsk",
                                        "/card/role",
                                        CARD.then(CardEntries::role, CardEntries::withRole)),
                                form.text(
                                        "card.dateAsk",
                                        "/card/date",
                                        CARD.then(CardEntries::date, CardEntries::withDate)))),
                form.group(
                        "card.sheet",
                        form.choice(
                                "card.paperAsk",
                                "/card/paper",
                                CARD.then(CardEntries::paper, CardEntries::withPaper),
                                List.of(Paper.values())),
                        form.row(
                                form.typed(
                                        "card.windStopAsk",
                                        Fields.WIND,
                                        "/card/windStop",
                                        CARD.then(CardEntries::windStop, CardEntries::withWindStop)),
                                form.text(
                                        "card.remarksAsk",
                                        "/card/remarks",
                                        CARD.then(CardEntries::remarks, CardEntries::withRemarks)))),
                form.group(
                        "card.sign",
                        form.sentence("card.signWhy"),
                        state,
                        missing,
                        form.row(make, form.button("card.folder", this::folder))));
    }

    private CardContent content(Setup setup, Assessment assessment, String keyCode) {
        return CardContents.of(setup, assessment, form.words(), keyCode);
    }

    /** Draws the preview anew when this step is in front; a later change overtakes an earlier one. */
    private void draw() {
        if (!front) {
            return;
        }
        Setup setup = form.model().setup();
        Assessment assessment = form.model().assessment();
        int mine = ++asked;
        thread.execute(() -> {
            try {
                List<BufferedImage> images = CardPicture.render(
                        CardPdf.draw(
                                content(setup, assessment, keyCode()),
                                context.clock().instant()),
                        PREVIEW_DPI);
                Platform.runLater(() -> {
                    if (mine == asked) {
                        show(images);
                    }
                });
            } catch (IOException problem) {
                Platform.runLater(() ->
                        desk.tell(form.words().text("card.noPreview", Arg.text(String.valueOf(problem.getMessage())))));
            }
        });
    }

    private void show(List<BufferedImage> images) {
        pages.getChildren().clear();
        for (BufferedImage image : images) {
            ImageView view = new ImageView(SwingFXUtils.toFXImage(image, null));
            view.setPreserveRatio(true);
            view.setSmooth(true);
            view.fitWidthProperty().bind(picture.widthProperty().subtract(28));
            VBox sheet = new VBox(view);
            sheet.getStyleClass().add("sheet");
            pages.getChildren().add(sheet);
        }
    }

    private String keyCode() throws IOException {
        Path key = context.user().key();
        return Files.exists(key) ? SigningKeys.load(key, new char[0]).code() : "";
    }

    private Path cards() {
        return context.user().root().resolve("cards");
    }

    private void make() {
        Setup setup = form.model().setup();
        Assessment assessment = form.model().assessment();
        thread.execute(() -> {
            try {
                var now = context.clock().instant();
                SigningKey key = SigningKeys.loadOrMake(
                        context.user().key(),
                        new char[0],
                        setup.card().signedBy(),
                        setup.card().role(),
                        now);
                byte[] card = CardMaker.make(
                        content(setup, assessment, key.code()),
                        key,
                        setup.card().signedBy(),
                        now);
                Path file = freeName(setup);
                SetupStore.writeWhole(file, card);
                Platform.runLater(() -> {
                    desk.tell(form.words().text("card.written", Arg.text(file.toString()), Arg.text(key.code())));
                    context.reveal().accept(file);
                    draw();
                });
            } catch (IOException problem) {
                Platform.runLater(() -> desk.tell(
                        form.words().text("card.notWritten", Arg.text(String.valueOf(problem.getMessage())))));
            }
        });
    }

    /** A name that says what it is and never stands on an earlier card. */
    private Path freeName(Setup setup) {
        String name = (setup.start().farm() + " " + setup.product().delivery() + " "
                        + setup.card().date())
                .strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-");
        Path file = cards().resolve(name + ".pdf");
        for (int i = 2; Files.exists(file); i++) {
            file = cards().resolve(name + "-" + i + ".pdf");
        }
        return file;
    }

    private void folder() {
        context.reveal().accept(cards());
    }
}
