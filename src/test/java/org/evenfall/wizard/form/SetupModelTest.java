package org.evenfall.wizard.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.util.Subscription;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.StartPaths;
import org.junit.jupiter.api.Test;

/** Changes, undo and followers of the model. */
class SetupModelTest {

    private static final EntryPath<String> FARM = StartPaths.FARM.path();

    private final List<Setup> saved = new ArrayList<>();
    private final SetupModel model = new SetupModel(Setup.EMPTY, Assessor::assess, saved::add);

    private String farm() {
        return FARM.get(model.setup());
    }

    @Test
    void aChangeIsAssessedShownAndSaved() {
        List<Double> widths = new ArrayList<>();
        model.follow(() -> widths.add(model.assessment().tramlineWidthM()));
        model.change(setup -> setup.withStart(setup.start().withTramlineWidth(EnteredQuantity.parse("92 ft"))));
        assertThat(widths).hasSize(1);
        assertThat(widths.get(0)).isBetween(28.04, 28.05);
        assertThat(saved).containsExactly(model.setup());
    }

    @Test
    void aChangeThatChangesNothingIsNone() {
        model.set(FARM, "");
        assertThat(model.canUndo()).isFalse();
        assertThat(saved).isEmpty();
    }

    @Test
    void undoAndRedoGoStepByStep() {
        model.set(FARM, "a");
        model.endEdit();
        model.set(FARM, "ab");
        assertThat(model.undo()).isTrue();
        assertThat(farm()).isEqualTo("a");
        assertThat(model.undo()).isTrue();
        assertThat(farm()).isEmpty();
        assertThat(model.undo()).isFalse();
        assertThat(model.redo()).isTrue();
        assertThat(model.redo()).isTrue();
        assertThat(farm()).isEqualTo("ab");
        assertThat(model.redo()).isFalse();
        // every step is saved like a change
        assertThat(saved).hasSize(6);
    }

    @Test
    void whatIsTypedAtOnePlaceIsUndoneAtOnce() {
        model.set(FARM, "a");
        model.set(FARM, "ab");
        model.set(StartPaths.CROP.path(), "w");
        model.set(StartPaths.CROP.path(), "wh");
        model.set(FARM, "abc");
        model.undo();
        assertThat(farm()).as("typed there again, later").isEqualTo("ab");
        model.undo();
        assertThat(model.setup().start().crop()).isEmpty();
        model.undo();
        assertThat(farm()).isEmpty();
        assertThat(model.canUndo()).isFalse();
        assertThat(model.redo() && model.redo() && model.redo()).isTrue();
        assertThat(farm()).isEqualTo("abc");
    }

    @Test
    void typingAfterUndoIsAChangeOfItsOwn() {
        model.set(FARM, "a");
        model.endEdit();
        model.set(FARM, "ab");
        model.undo();
        model.set(FARM, "ax");
        model.undo();
        assertThat(farm()).isEqualTo("a");
    }

    @Test
    void aRemovalIsAnnouncedAndAChangeOfItsOwn() {
        List<String> announced = new ArrayList<>();
        model.onRemoval(() -> announced.add(farm()));
        model.set(FARM, "a");
        assertThat(announced).isEmpty();
        model.remove(setup -> FARM.set(setup, ""));
        assertThat(announced).containsExactly("");
        model.undo();
        assertThat(farm()).isEqualTo("a");
    }

    @Test
    void aChangeAfterUndoForgetsWhatWasUndone() {
        model.set(FARM, "a");
        model.undo();
        model.set(FARM, "b");
        assertThat(model.redo()).isFalse();
        assertThat(farm()).isEqualTo("b");
        model.undo();
        assertThat(farm()).isEmpty();
    }

    /** What is filled in belongs to the same change, so that one undo takes both back. */
    @Test
    void whatIsFilledInIsPartOfTheChange() {
        SetupModel filled = new SetupModel(
                Setup.EMPTY,
                Assessor::assess,
                saved::add,
                (next, before, assessment) -> next.withStart(
                        next.start().withCrop("after " + before.start().farm())));
        filled.set(FARM, "a");
        filled.endEdit();
        filled.set(FARM, "b");
        assertThat(filled.setup().start().crop()).isEqualTo("after a");
        filled.undo();
        assertThat(filled.setup().start().crop()).isEqualTo("after ");
        assertThat(FARM.get(filled.setup())).isEqualTo("a");
        filled.open(Setup.EMPTY);
        assertThat(filled.setup()).isEqualTo(Setup.EMPTY);
    }

    @Test
    void aLimitedNumberOfChangesCanBeUndone() {
        Assessment always = Assessor.assess(Setup.EMPTY);
        SetupModel fast = new SetupModel(Setup.EMPTY, setup -> always, setup -> {});
        for (int i = 1; i <= SetupModel.MOST_UNDO + 1; i++) {
            fast.set(FARM, "farm " + i);
            fast.endEdit();
        }
        int undone = 0;
        while (fast.undo()) {
            undone++;
        }
        assertThat(undone).isEqualTo(SetupModel.MOST_UNDO);
        // the first change is the one that is forgotten
        assertThat(FARM.get(fast.setup())).isEqualTo("farm 1");
    }

    @Test
    void anotherSetupHasNothingToUndoOrRedo() {
        model.set(FARM, "a");
        model.endEdit();
        model.set(FARM, "b");
        model.undo();
        Setup other = FARM.set(Setup.EMPTY, "other");
        model.open(other);
        assertThat(model.canUndo()).isFalse();
        assertThat(model.undo()).isFalse();
        assertThat(model.redo()).isFalse();
        assertThat(model.setup()).isEqualTo(other);
    }

    @Test
    void followersEndOnce() {
        List<String> called = new ArrayList<>();
        Subscription first = model.follow(() -> called.add("first"));
        model.follow(() -> called.add("second"));
        assertThat(model.followers()).isEqualTo(2);
        first.unsubscribe();
        first.unsubscribe();
        assertThat(model.followers()).isEqualTo(1);
        model.set(FARM, "a");
        assertThat(called).containsExactly("second");
    }
}
