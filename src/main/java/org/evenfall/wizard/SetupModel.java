package org.evenfall.wizard;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;

/**
 * The one truth of the wizard: the setup as typed, and its assessment, made anew with every change. Knows no control, so
 * that tests drive it without a window.
 */
final class SetupModel {

    private static final int MOST_UNDO = 500;

    private final Function<Setup, Assessment> assess;
    private final Consumer<Setup> keep;
    private final ReadOnlyObjectWrapper<Setup> setup;
    private final ReadOnlyObjectWrapper<Assessment> assessment;
    private final Deque<Setup> before = new ArrayDeque<>();
    private final Deque<Setup> after = new ArrayDeque<>();

    /**
     * @param first the setup to begin with
     * @param assess makes an assessment
     * @param keep told of every change, to save it
     */
    SetupModel(Setup first, Function<Setup, Assessment> assess, Consumer<Setup> keep) {
        this.assess = assess;
        this.keep = keep;
        this.setup = new ReadOnlyObjectWrapper<>(first);
        this.assessment = new ReadOnlyObjectWrapper<>(assess.apply(first));
    }

    Setup setup() {
        return setup.get();
    }

    Assessment assessment() {
        return assessment.get();
    }

    /** Tells of every change, when the assessment is already that of the new setup. */
    ReadOnlyObjectProperty<Setup> setupProperty() {
        return setup.getReadOnlyProperty();
    }

    void change(UnaryOperator<Setup> how) {
        Setup next = how.apply(setup.get());
        if (!next.equals(setup.get())) {
            before.push(setup.get());
            if (before.size() > MOST_UNDO) {
                before.removeLast();
            }
            after.clear();
            show(next);
        }
    }

    <T> void set(EntryPath<T> lens, T value) {
        change(current -> lens.set(current, value));
    }

    /** Another setup, with nothing to undo. */
    void open(Setup other) {
        before.clear();
        after.clear();
        show(other);
    }

    boolean canUndo() {
        return !before.isEmpty();
    }

    boolean undo() {
        return step(before, after);
    }

    boolean redo() {
        return step(after, before);
    }

    private boolean step(Deque<Setup> from, Deque<Setup> to) {
        Setup earlier = from.poll();
        if (earlier == null) {
            return false;
        }
        to.push(setup.get());
        show(earlier);
        return true;
    }

    private void show(Setup next) {
        // the assessment first, so that whoever hears of the setup finds what follows from it
        assessment.set(assess.apply(next));
        setup.set(next);
        keep.accept(next);
    }
}
