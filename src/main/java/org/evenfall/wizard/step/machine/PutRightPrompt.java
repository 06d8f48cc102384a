package org.evenfall.wizard.step.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.machine.CheckItem;
import org.evenfall.setup.CheckAnswers;
import org.evenfall.setup.FailedChecks;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.VisibleWhen;

/** What failed: put right, or gone on with for a reason that is printed on the card. Guards never. */
public final class PutRightPrompt extends FormPrompt {

    private static final EntryPath<MachineCheckEntries> CHECK = MachineCheckPaths.MACHINE_CHECK.only();

    /** @param picture of the step */
    public PutRightPrompt(Form form, Supplier<? extends Node> picture) {
        super("3e", form, picture);
    }

    @Override
    public Node entries() {
        List<Node> reasons = new ArrayList<>();
        for (CheckItem item : CheckItem.values()) {
            if (CheckAnswers.mayBeOverridden(item)) {
                reasons.add(when(
                        failed -> failed.parts().contains(item),
                        form().text(form().words().choice(item), reason(item))));
            }
        }
        reasons.add(when(FailedChecks::vane, form().text(MachineCheckPaths.VANE_OVERRIDE_REASON)));
        reasons.add(when(FailedChecks::measured, form().text(MachineCheckPaths.LEVEL_OVERRIDE_REASON)));
        return new VBox(
                when(failed -> failed.parts().contains(CheckItem.GUARDS), form().sentence("yard.guards")),
                form().row(reasons.toArray(new Node[0])));
    }

    private static EntryPath<String> reason(CheckItem item) {
        EntryPath<CheckEntry> place = CHECK.then(
                        MachineCheckPaths.CHECKS.name(), checks -> checks, (old, checks) -> checks)
                .then(item.name(), checks -> CheckAnswers.of(checks, item), CheckAnswers::with);
        return MachineCheckPaths.CHECK_OVERRIDE_REASON.at(place);
    }

    private Node when(Predicate<FailedChecks> condition, Node node) {
        return VisibleWhen.when(
                form(), () -> condition.test(FailedChecks.of(form().model().assessment())), node);
    }

    @Override
    public boolean asked() {
        return FailedChecks.of(form().model().assessment()).any();
    }

    @Override
    public Help help() {
        return Help.terms("putRight").from("source.practice");
    }
}
