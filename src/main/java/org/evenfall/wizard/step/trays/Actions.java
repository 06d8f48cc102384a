package org.evenfall.wizard.step.trays;

import java.util.Map;
import org.evenfall.setup.BucketTestDraft;
import org.evenfall.setup.NextAction;
import org.evenfall.trays.Advice;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Navigation;
import org.jspecify.annotations.Nullable;

/** Carries out what is to be done after a tray test: goes to the prompt where it is done, with what is filled in there. */
final class Actions {

    /** Prompts from which the way leads back to the result. */
    private static final Map<NextAction, String> PLACES = Map.of(
            NextAction.PARTS, "3a",
            NextAction.VANES, "3b",
            NextAction.LEVEL, "3c",
            NextAction.TYRES, "3c",
            NextAction.PTO_SPEED, "3d",
            NextAction.OUTLETS, "5e",
            NextAction.BUCKET_AGAIN, "5e",
            NextAction.PRODUCT, "1c",
            NextAction.DIRECTION, "0f");

    private static final String BEFORE_DRIVING = "6b";
    private static final String CATCHES = "6c";
    private static final String BORDER = "6g";

    private final Form form;
    private final TrayTests tests;
    private final Navigation navigation;

    Actions(Form form, TrayTests tests, Navigation navigation) {
        this.form = form;
        this.tests = tests;
        this.navigation = navigation;
    }

    /** What is to be done now. */
    NextAction next() {
        return NextAction.after(form.model().assessment());
    }

    /** Does it. */
    void run() {
        NextAction action = next();
        String place = PLACES.get(action);
        if (action == NextAction.BUCKET_AGAIN) {
            form.model()
                    .change(setup -> BucketTestDraft.added(setup, form.model().assessment(), form::numberText));
        }
        if (place != null) {
            navigation.visit(place);
        } else if (action.newTest()) {
            newTest();
        } else if (action == NextAction.MORE_RUNS) {
            moreRuns(moreAdvised());
        } else {
            navigation.show(action == NextAction.TYPE_AGAIN ? CATCHES : BORDER);
        }
    }

    /** A test that was begun and is still to be driven is driven first. */
    private void newTest() {
        if (!tests.lastIsToDrive()) {
            tests.begin();
        }
        navigation.show(BEFORE_DRIVING);
    }

    /** More runs into the trays of the last test, then their catches. */
    void moreRuns(int more) {
        tests.addRuns(more);
        navigation.show(CATCHES);
    }

    private int moreAdvised() {
        Advice advice = form.model().assessment().trays().advice();
        @Nullable Integer more = advice == null ? null : advice.moreRuns();
        return more == null ? 1 : more;
    }
}
