package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.PlainText;
import org.evenfall.setup.entry.CardEntries;
import org.evenfall.sign.KeyRing;
import org.evenfall.wizard.form.Disclosure;
import org.evenfall.wizard.form.Form;

/** Step 7: the key that signs. Opened, closed by a passphrase, brought along, made anew. */
final class KeyForm {

    /** Characters of a name from a certificate that are shown. */
    private static final int MOST_NAME = 80;

    private final Form form;
    private final WizardContext context;
    private final CardWork work;
    private final Runnable changed;
    private final Label state = new Label();
    private final Label trouble = new Label();
    private final VBox unlock = new VBox();
    private final VBox manage = new VBox();

    /** @param changed called when another key signs from now on */
    KeyForm(Form form, WizardContext context, CardWork work, Runnable changed) {
        this.form = form;
        this.context = context;
        this.work = work;
        this.changed = changed;
        for (Label label : new Label[] {state, trouble}) {
            label.setWrapText(true);
            label.getStyleClass().add("sentence");
        }
        state.setId("key.state");
        trouble.setId("key.trouble");
        showTrouble("");
        // until it is known which key there is, nothing is asked that would take the keys typed
        shown(unlock, false);
        shown(manage, false);
    }

    /** Which key signs, and what is asked before it can. */
    Node stateNode() {
        unlock.getChildren().setAll(unlocking());
        return new VBox(state, trouble, unlock);
    }

    /** What can be done with the key. */
    Node options() {
        manage.getChildren().setAll(protecting(), bringing(), renewing());
        return manage;
    }

    /** Asks for the state of the key and shows it. */
    void refresh() {
        work.keys(keys -> {}, this::show);
    }

    private void show(KeyRing.Status status) {
        Arg code = Arg.text(status.code());
        String text = switch (status.state()) {
            case NONE -> form.words().text("card.keyNone");
            case LOCKED -> form.words().text("key.locked");
            case UNREADABLE -> form.words().text("key.unreadable");
            case OPEN ->
                form.words()
                        .text(
                                status.closed() ? "key.openClosed" : "key.open",
                                code,
                                Arg.text(PlainText.oneLine(status.name(), MOST_NAME)),
                                Arg.text(status.until()));
        };
        state.setText(status.wasReadable() ? text + " " + form.words().text("key.wasReadable") : text);
        shown(unlock, status.state() == KeyRing.State.LOCKED);
        shown(manage, status.state() != KeyRing.State.NONE);
    }

    private static void shown(Node node, boolean there) {
        node.setManaged(there);
        node.setVisible(there);
    }

    private void showTrouble(String sentence) {
        trouble.setText(sentence);
        shown(trouble, !sentence.isEmpty());
    }

    private Node unlocking() {
        PasswordField passphrase = secret("key.passphrase");
        Button open = form.button("key.openIt", () -> with(taken(passphrase), KeyRing::unlock));
        passphrase.setOnAction(event -> open.fire());
        return form.row(form.labelledNode("key.passphrase", passphrase), form.alignedButton(open));
    }

    private Node protecting() {
        PasswordField first = secret("key.newPassphrase");
        PasswordField again = secret("key.again");
        Disclosure[] whole = new Disclosure[1];
        Button close = form.button("key.protect", () -> {
            if (!first.getText().equals(again.getText())) {
                showTrouble(form.words().text("key.differ"));
                return;
            }
            again.clear();
            whole[0].close();
            with(taken(first), KeyRing::protect);
        });
        whole[0] = new Disclosure(
                form,
                "key.protectAsk",
                form.sentence("key.protectHow"),
                form.row(
                        form.labelledNode("key.newPassphrase", first),
                        form.labelledNode("key.again", again),
                        form.alignedButton(close)));
        return whole[0];
    }

    private Node bringing() {
        PasswordField passphrase = secret("key.itsPassphrase");
        Disclosure[] whole = new Disclosure[1];
        Button choose = form.button(
                "key.choose",
                () -> context.pick()
                        .pick(form.words().text("key.choose"), "p12", "pfx")
                        .ifPresent(file -> importKey(file, taken(passphrase), whole[0])));
        whole[0] = new Disclosure(
                form,
                "key.bringAsk",
                form.sentence("key.bringHow"),
                form.row(form.labelledNode("key.itsPassphrase", passphrase), form.alignedButton(choose)));
        return whole[0];
    }

    private void importKey(Path file, char[] passphrase, Disclosure whole) {
        whole.close();
        with(
                passphrase,
                (keys, typed) -> keys.importKey(file, typed, context.clock().instant()));
    }

    private Node renewing() {
        Disclosure[] whole = new Disclosure[1];
        Button renew = form.button("key.renew", () -> {
            CardEntries card = form.model().setup().card();
            whole[0].close();
            with(keys -> keys.renew(
                    card.signedBy(), card.role(), new char[0], context.clock().instant()));
        });
        whole[0] = new Disclosure(form, "key.renewAsk", form.sentence("key.renewHow"), form.row(renew));
        return whole[0];
    }

    /** Work with a passphrase, which is overwritten afterwards. */
    @FunctionalInterface
    private interface SecretWork {
        void on(KeyRing keys, char[] passphrase) throws IOException;
    }

    private void with(char[] passphrase, SecretWork secretWork) {
        with(keys -> {
            try {
                secretWork.on(keys, passphrase);
            } finally {
                Arrays.fill(passphrase, '\0');
            }
        });
    }

    private void with(CardWork.KeyWork keyWork) {
        showTrouble("");
        work.keys(keyWork, status -> {
            show(status);
            changed.run();
        });
    }

    /** Takes what was typed out of the field. */
    private static char[] taken(PasswordField field) {
        char[] typed = field.getText().toCharArray();
        field.clear();
        return typed;
    }

    private PasswordField secret(String id) {
        PasswordField field = new PasswordField();
        field.setId(id);
        field.setPrefColumnCount(14);
        field.setAccessibleText(form.words().text(id));
        return field;
    }
}
