package org.evenfall.wizard.step.rate;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Finding;
import org.evenfall.result.BucketLines;
import org.evenfall.setup.BucketProgress;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.wizard.form.ConfirmConditions;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.ReservedSentence;
import org.evenfall.wizard.form.SettingsForm;

/** What a bucket test was done with, in one sentence; to be changed where it was otherwise than set now. */
final class BucketConditionsForm {

    private final Form form;
    private final int index;
    private final EntryPath<BucketEntry> at;
    private final VBox entries;

    BucketConditionsForm(Form form, int index) {
        this.form = form;
        this.index = index;
        this.at = RatePaths.BUCKET_TESTS.item(index);
        this.entries = new VBox(
                form.row(
                        form.quantity(RatePaths.BUCKET_BULK_DENSITY, at),
                        form.text(RatePaths.BUCKET_DELIVERY, at),
                        form.text(RatePaths.BUCKET_DATE, at)),
                SettingsForm.of(form, RatePaths.BUCKET_SETTINGS.at(at)),
                ConfirmConditions.button(form, BucketProgress.ASSUMED));
        entries.getStyleClass().add("parts");
        entries.managedProperty().bind(entries.visibleProperty());
        entries.setVisible(false);
    }

    /** Shows the entries, or hides them again. */
    Button ask() {
        Button ask = form.button("rate.conditionsAsk", () -> entries.setVisible(!entries.isVisible()));
        ask.setFocusTraversable(false);
        ask.getStyleClass().add("quiet");
        return ask;
    }

    Label sentence() {
        return ReservedSentence.of(form, "sentence", 2, this::text);
    }

    Node entries() {
        return entries;
    }

    /** What is found about the conditions goes before them. */
    private String text() {
        List<Finding> findings = BucketProgress.conditions(form.model().assessment(), index);
        return findings.isEmpty()
                ? BucketLines.conditions(form.words(), form.model().assessment().read(), at)
                : form.words().of(findings.get(0));
    }
}
