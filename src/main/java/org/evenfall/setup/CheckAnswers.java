package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.MachineCheck;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.entry.UnknownKeys;

/** The answers of the machine check by item: the entries keep only those that were given. */
public final class CheckAnswers {

    private CheckAnswers() {}

    /** The entry of an item, unanswered when there is none yet. */
    public static CheckEntry of(MachineCheckEntries entries, CheckItem item) {
        return entries.checks().stream()
                .filter(check -> check.item() == item)
                .findFirst()
                .orElse(new CheckEntry(item, CheckAnswer.UNANSWERED, "", UnknownKeys.NONE));
    }

    /** The entries with this one in place of the earlier one of the same item, or added at the end. */
    public static MachineCheckEntries with(MachineCheckEntries entries, CheckEntry entry) {
        List<CheckEntry> checks = new ArrayList<>();
        boolean replaced = false;
        for (CheckEntry check : entries.checks()) {
            checks.add(check.item() == entry.item() ? entry : check);
            replaced |= check.item() == entry.item();
        }
        if (!replaced) {
            checks.add(entry);
        }
        return entries.withChecks(checks);
    }

    /** The entries with every unanswered item answered good; what was answered stays. */
    public static MachineCheckEntries restGood(MachineCheckEntries entries) {
        MachineCheckEntries next = entries;
        for (CheckItem item : CheckItem.values()) {
            CheckEntry entry = of(next, item);
            if (entry.answer() == CheckAnswer.UNANSWERED) {
                next = with(next, entry.withAnswer(CheckAnswer.GOOD));
            }
        }
        return next;
    }

    /** The answers that may be given to an item; only the agitator may be not fitted. */
    public static List<CheckAnswer> answers(CheckItem item) {
        return item == CheckItem.AGITATOR
                ? List.of(CheckAnswer.GOOD, CheckAnswer.FAILED, CheckAnswer.NOT_FITTED)
                : List.of(CheckAnswer.GOOD, CheckAnswer.FAILED);
    }

    /** Whether a failed item may be overridden with a reason. */
    public static boolean mayBeOverridden(CheckItem item) {
        return MachineCheck.mayBeOverridden(item);
    }
}
