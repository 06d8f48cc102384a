package org.evenfall.wizard.step.card;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.LogLines;
import org.evenfall.setup.SeasonLogResult;
import org.evenfall.setup.SeasonLogResult.Field;
import org.evenfall.setup.path.LogPaths;
import org.evenfall.setup.path.PrivateEntries;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.ReservedSentence;
import org.evenfall.wizard.picture.LogPicture;

/** What was spread, pass by pass, after the card. */
public final class PassesPrompt extends FormPrompt {

    private static final int DATE_LETTERS = 8;
    private static final int NAME_LETTERS = 8;

    /** The page of the passes; its picture shows each field against the plan of the season. */
    public PassesPrompt(Form form) {
        super("7d", form, new Lazy<>(() -> picture(form)));
    }

    private static LogPicture picture(Form form) {
        LogPicture picture = new LogPicture(form.words());
        form.follow(() -> picture.show(form.model().assessment().log().fields(), field -> shown(form, field)));
        return picture;
    }

    @Override
    public Node entries() {
        return new VBox(
                EntryTable.rows(
                                form(),
                                LogPaths.PASSES,
                                List.of(
                                        Column.text(form(), LogPaths.DATE, DATE_LETTERS),
                                        Column.text(form(), LogPaths.FIELD, NAME_LETTERS),
                                        Column.quantity(form(), LogPaths.AREA),
                                        Column.quantity(form(), LogPaths.PRODUCT_DRAWN),
                                        Column.text(form(), LogPaths.NOTE, NAME_LETTERS)))
                        .node(),
                ReservedSentence.of(form(), "figure-line", 2, () -> LogLines.sum(form().words(), log())),
                ReservedSentence.of(form(), "sentence", 2, this::last));
    }

    private SeasonLogResult log() {
        return form().model().assessment().log();
    }

    /** The field that was logged last. */
    private String last() {
        List<Field> fields = log().fields();
        return log().passes().stream()
                .filter(pass -> pass.amounts() != null)
                .reduce((one, other) -> other)
                .flatMap(pass -> fields.stream()
                        .filter(field ->
                                SeasonLogResult.plain(field.field()).equals(SeasonLogResult.plain(pass.field())))
                        .findFirst())
                .map(field -> LogLines.field(form().words(), field, shown(form(), field.field())))
                .orElse("");
    }

    private static String shown(Form form, String field) {
        return form.model().namesHidden() && !field.isEmpty() ? PrivateEntries.DOTS : field;
    }

    @Override
    public Help help() {
        return Help.terms("totalNitrogen", "nitrogenContent").from("source.rateTolerance");
    }
}
