package org.evenfall.wizard.form;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.util.Subscription;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.PrivateEntries;

/**
 * The state of the wizard: the setup as typed, its assessment, made anew with every change, and what can be undone. Knows
 * no control, so that tests use it without a window.
 */
public final class SetupModel {

    /** So many changes can be undone; older ones are forgotten. */
    public static final int MOST_UNDO = 500;

    private final Function<Setup, Assessment> assess;
    private final Consumer<Setup> save;
    private final Completion completion;
    private final ObjectProperty<Setup> setup;
    private final BooleanProperty namesHidden = new SimpleBooleanProperty();
    private Supplier<Assessment> assessment;
    private final Lazy<Assessment> firstAssessment;
    private int followers;
    private final Deque<Setup> before = new ArrayDeque<>();
    private final Deque<Setup> after = new ArrayDeque<>();
    private final List<Runnable> removals = new ArrayList<>();
    private final List<Runnable> last = new ArrayList<>();

    /** Pointer of the entry that is being edited: all that is typed there is one change. Empty while none is. */
    private String edited = "";

    private boolean locked;

    /**
     * @param first the setup to begin with
     * @param assess makes an assessment
     * @param save gets every changed setup, to save it
     */
    public SetupModel(Setup first, Function<Setup, Assessment> assess, Consumer<Setup> save) {
        this(first, assess, save, (next, before, assessment) -> next);
    }

    /**
     * @param first the setup to begin with
     * @param assess makes an assessment
     * @param save gets every changed setup, to save it
     * @param completion fills in what follows from a change
     */
    public SetupModel(Setup first, Function<Setup, Assessment> assess, Consumer<Setup> save, Completion completion) {
        this(first, () -> assess.apply(first), assess, save, completion);
    }

    /**
     * @param first the setup to begin with
     * @param assessment what follows from it, made when it is first asked for
     * @param assess makes an assessment
     * @param save gets every changed setup, to save it
     * @param completion fills in what follows from a change
     */
    public SetupModel(
            Setup first,
            Supplier<Assessment> assessment,
            Function<Setup, Assessment> assess,
            Consumer<Setup> save,
            Completion completion) {
        this.completion = completion;
        this.assess = assess;
        this.save = save;
        this.setup = new SimpleObjectProperty<>(first);
        this.firstAssessment = new Lazy<>(assessment);
        this.assessment = firstAssessment;
    }

    /** Fills in what follows from a change. */
    @FunctionalInterface
    public interface Completion {

        /**
         * The changed setup with what is filled in.
         *
         * @param next the setup as changed
         * @param before the setup before the change
         * @param assessment assessment of the setup before the change
         */
        Setup complete(Setup next, Setup before, Assessment assessment);
    }

    /** The setup as typed so far. */
    public Setup setup() {
        return setup.get();
    }

    /** The setup as others may see it: while names and prices are hidden, without them. */
    public Setup shown() {
        return shown(setup.get());
    }

    /** Any setup as others may see it. */
    public Setup shown(Setup any) {
        return namesHidden.get() ? PrivateEntries.hidden(any) : any;
    }

    /** Whether names and prices are hidden. */
    public boolean namesHidden() {
        return namesHidden.get();
    }

    /** Hides names and prices, or shows them again; nothing of it is kept in the setup. */
    public void hideNames(boolean hidden) {
        Assessment now = assess(setup.get(), hidden);
        assessment = () -> now;
        namesHidden.set(hidden);
        last.forEach(Runnable::run);
    }

    private Assessment assess(Setup of, boolean hidden) {
        return assess.apply(hidden ? PrivateEntries.withoutPrices(of) : of);
    }

    /** What follows from the setup; while prices are hidden, nothing follows from them. */
    public Assessment assessment() {
        return assessment.get();
    }

    /** Whether it is known what follows from the setup; only as the program starts it is not. */
    public boolean isAssessed() {
        return !assessment.equals(firstAssessment) || firstAssessment.ifMade().isPresent();
    }

    /** Runs an update after every change, and when names are hidden or shown, when the assessment is already that of the new setup. */
    public Subscription follow(Runnable update) {
        Subscription listener =
                setup.subscribe((old, now) -> update.run()).and(namesHidden.subscribe((old, now) -> update.run()));
        followers++;
        return new Subscription() {
            private boolean open = true;

            @Override
            public void unsubscribe() {
                if (open) {
                    open = false;
                    followers--;
                    listener.unsubscribe();
                }
            }
        };
    }

    /** Runs an update after all those that {@link #follow} a change, also those that began to follow later. */
    public void followLast(Runnable update) {
        last.add(update);
    }

    /** How many updates run after a change now; constant as long as the page is the same. */
    public int followers() {
        return followers;
    }

    /** A setup that can only be read does not change. */
    public void lock(boolean readOnly) {
        locked = readOnly;
    }

    /** Whether it can only be read. */
    public boolean isLocked() {
        return locked;
    }

    /** Changes the setup; a change that leaves it equal is none. */
    public void change(UnaryOperator<Setup> how) {
        change("", how);
    }

    /** Keeps something that is no answer of the person's: it cannot be undone and stays when an answer is. */
    public void note(UnaryOperator<Setup> how) {
        noted(before, how);
        noted(after, how);
        show(how.apply(setup.get()));
    }

    private static void noted(Deque<Setup> setups, UnaryOperator<Setup> how) {
        List<Setup> all = setups.stream().map(how).toList();
        setups.clear();
        setups.addAll(all);
    }

    /** Puts a value at its place in the setup. What is typed at one place until {@link #endEdit} is undone at once. */
    public <T> void set(EntryPath<T> path, T value) {
        change(path.pointer(), current -> path.set(current, value));
    }

    /** Takes something out of the setup, such as a row; a change of its own that is announced. */
    public void remove(UnaryOperator<Setup> how) {
        change(how);
        removals.forEach(Runnable::run);
    }

    /** Runs after something was taken out, so that the way back can be offered. */
    public void onRemoval(Runnable announce) {
        removals.add(announce);
    }

    /** The keyboard leaves the entry: what is typed next is a change of its own, also at the same place. */
    public void endEdit() {
        edited = "";
    }

    private void change(String edit, UnaryOperator<Setup> how) {
        Setup changed = how.apply(setup.get());
        if (locked || changed.equals(setup.get())) {
            return;
        }
        Setup next = completion.complete(changed, setup.get(), assessment.get());
        boolean continued = !edit.isEmpty() && edit.equals(edited) && !before.isEmpty();
        if (!continued) {
            before.push(setup.get());
            if (before.size() > MOST_UNDO) {
                before.removeLast();
            }
        }
        edited = edit;
        after.clear();
        show(next);
    }

    /** Another setup, with nothing to undo. */
    public void open(Setup other) {
        before.clear();
        after.clear();
        endEdit();
        show(other);
    }

    /** Whether there is a change to undo. */
    public boolean canUndo() {
        return !before.isEmpty();
    }

    /** Takes back the last change; false when there is none. */
    public boolean undo() {
        return step(before, after);
    }

    /** Makes the change last taken back again; false when there is none. */
    public boolean redo() {
        return step(after, before);
    }

    private boolean step(Deque<Setup> from, Deque<Setup> to) {
        Setup earlier = from.poll();
        if (earlier == null) {
            return false;
        }
        to.push(setup.get());
        endEdit();
        show(earlier);
        return true;
    }

    private void show(Setup next) {
        // the assessment first, so that an update finds what follows from the new setup
        Assessment now = assess(next, namesHidden.get());
        assessment = () -> now;
        setup.set(next);
        last.forEach(Runnable::run);
        save.accept(next);
    }
}
