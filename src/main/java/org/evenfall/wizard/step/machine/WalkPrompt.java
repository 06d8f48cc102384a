package org.evenfall.wizard.step.machine;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.machine.CheckItem;
import org.evenfall.setup.CheckAnswers;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.wizard.form.Choices;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** The walk round the machine. */
public final class WalkPrompt extends FormPrompt {

    private static final EntryPath<MachineCheckEntries> CHECK = MachineCheckPaths.MACHINE_CHECK.only();

    /** @param picture of the step */
    public WalkPrompt(Form form, Supplier<? extends Node> picture) {
        super("3a", form, picture);
    }

    @Override
    public Node entries() {
        return checks();
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("agitator", "shutter").from("source.practice");
    }

    private Node checks() {
        GridPane grid = new GridPane();
        grid.setId(MachineCheckPaths.CHECKS.pointer());
        grid.getStyleClass().addAll("rows", "walk");
        int row = 0;
        for (CheckItem item : CheckItem.values()) {
            // by item, wherever in the list its answer is kept
            EntryPath<CheckEntry> place = CHECK.then(
                            MachineCheckPaths.CHECKS.name(), checks -> checks, (old, checks) -> checks)
                    .then(item.name(), checks -> CheckAnswers.of(checks, item), CheckAnswers::with);
            Label name = new Label(form().words().choice(item));
            name.setWrapText(true);
            grid.add(name, 0, row);
            grid.add(
                    new Choices<>(form(), MachineCheckPaths.CHECK_ANSWER.at(place)).buttons(CheckAnswers.answers(item)),
                    1,
                    row);
            row++;
        }
        Button all = form().button(
                        "yard.restGood",
                        () -> form().model()
                                .set(
                                        CHECK,
                                        CheckAnswers.restGood(
                                                CHECK.get(form().model().setup()))));
        return new VBox(8, grid, all);
    }
}
