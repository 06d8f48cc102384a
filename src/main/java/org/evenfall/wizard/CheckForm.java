package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.evenfall.publish.VerifyText;
import org.evenfall.quantity.PlainText;
import org.evenfall.sign.VerifyResult;
import org.evenfall.wizard.form.Form;

/** Step 7: whether a card is as it was signed, by whose key, and which keys are known here. */
final class CheckForm {

    /** Characters of a line in the list of known keys. */
    private static final int MOST_LINE = 120;

    private final Form form;
    private final WizardContext context;
    private final CardWork work;
    private final VBox answer = new VBox();
    private final VBox known = new VBox();

    CheckForm(Form form, WizardContext context, CardWork work) {
        this.form = form;
        this.context = context;
        this.work = work;
        answer.getStyleClass().add("attempts");
        known.getStyleClass().add("attempts");
    }

    Node node() {
        Button check = form.button(
                "check.choose",
                () -> context.pick()
                        .pick(form.words().text("check.choose"), "pdf")
                        .ifPresent(
                                card -> work.verify(card, result -> result.ifPresentOrElse(this::show, this::broken))));
        list();
        return new VBox(form.sentence("check.how"), form.row(check), answer, known);
    }

    private void broken() {
        answer.getChildren().setAll(line("figure-line", form.words().text("check.broken")));
    }

    private void show(VerifyResult result) {
        List<Node> lines = new ArrayList<>();
        for (String sentence : VerifyText.of(result, form.words())) {
            lines.add(line(lines.isEmpty() ? "figure-line" : "sentence", sentence));
        }
        if (!result.keyCode().isEmpty() && result.unchanged() && !result.knownKey()) {
            lines.add(form.button(
                    "check.remember",
                    () -> work.keys(keys -> keys.remember(result.keyCode(), result.keyName()), status -> {
                        answer.getChildren().clear();
                        list();
                    })));
        }
        answer.getChildren().setAll(lines);
    }

    private Label line(String style, String text) {
        Label line = new Label(text);
        line.setWrapText(true);
        line.getStyleClass().add(style);
        return line;
    }

    /** The keys known here, each to be forgotten. */
    void list() {
        Map<String, String> keys = work.known();
        List<Node> lines = new ArrayList<>();
        if (!keys.isEmpty()) {
            lines.add(line("sentence", form.words().text("check.known")));
        }
        keys.forEach((code, name) -> {
            Button forget = new Button(form.words().text("check.forget"));
            forget.setId("check.forget/" + code);
            forget.getStyleClass().add("quiet");
            forget.setOnAction(event -> work.keys(ring -> ring.forget(code), status -> list()));
            lines.add(form.row(line("sentence", PlainText.oneLine(code + "  " + name, MOST_LINE)), forget));
        });
        known.getChildren().setAll(lines);
    }
}
