package org.evenfall.wizard.form;

import javafx.scene.Node;
import javafx.scene.control.Button;
import org.evenfall.setup.ConditionDraft;

/** A person confirms that older tests were done under what is set now. */
public final class ConfirmConditions {

    private ConfirmConditions() {}

    /**
     * A button that is there while something is assumed of a test.
     *
     * @param key key of the finding that says so
     */
    public static Node button(Form form, String key) {
        Button button = form.button(
                "test.confirm",
                () -> form.model()
                        .change(setup ->
                                ConditionDraft.confirmed(setup, form.model().assessment(), form::numberText)));
        button.setId("test.confirm." + key);
        button.getStyleClass().add("quiet");
        return VisibleWhen.when(
                form,
                () -> form.model().assessment().findings().stream()
                        .anyMatch(finding -> finding.key().equals(key)),
                button);
    }
}
