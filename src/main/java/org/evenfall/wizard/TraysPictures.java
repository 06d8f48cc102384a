package org.evenfall.wizard;

import java.util.List;
import javafx.scene.Node;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.SinglePassTest;
import org.evenfall.setup.TraysResult;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.picture.CatchBarsPicture;
import org.evenfall.wizard.picture.PacingPicture;
import org.evenfall.wizard.picture.PassArrowsPicture;
import org.evenfall.wizard.picture.PatternPicture;
import org.evenfall.wizard.picture.SwitchingPicture;
import org.evenfall.wizard.picture.VerdictPicture;
import org.evenfall.wizard.step.trays.TrayTests;
import org.jspecify.annotations.Nullable;

/** The pictures of step 6; each follows the setup. */
final class TraysPictures {

    private final Form form;
    private final TrayTests tests;
    private final PacingPicture places;
    private final PassArrowsPicture passes;
    private final CatchBarsPicture catches;
    private final VerdictPicture verdict;
    private final PatternPicture longPass;
    private final SwitchingPicture switching;
    private int typed = -1;

    TraysPictures(Form form, TrayTests tests) {
        this.form = form;
        this.tests = tests;
        this.places = new PacingPicture(form.words());
        this.passes = new PassArrowsPicture(form.words());
        this.catches = new CatchBarsPicture(form.words());
        this.verdict = new VerdictPicture(form.words());
        this.longPass = new PatternPicture(form.words());
        this.switching = new SwitchingPicture(form.words());
        form.follow(this::show);
        tests.onShown(this::show);
    }

    private void show() {
        Assessment assessment = form.model().assessment();
        ReadNumbers numbers = new ReadNumbers(assessment.read());
        TraysResult trays = assessment.trays();
        Double widthM = assessment.tramlineWidthM();
        EntryPath<TrayTestEntry> shown = TrayPaths.TESTS.item(tests.index());
        places.show(trays.layout(), widthM);
        passes.show(
                trays.layout(),
                widthM,
                assessment.now() == null
                        ? DrivingPattern.BACK_AND_FORTH
                        : assessment.now().tramlines().pattern(),
                numbers.of(TrayPaths.TEST_WIND, shown),
                trays.windLimits());
        Advice advice = trays.advice();
        verdict.show(trays.comparable(), advice == null ? null : advice.expectedField());
        longPass(trays.line(), widthM);
        switching.show(
                numbers.of(TrayPaths.SWITCH_ON),
                numbers.of(TrayPaths.SWITCH_OFF),
                widthM,
                form.model().setup().trays().borderSide());
        catches();
    }

    /** The catches of the test shown as they are typed. */
    private void catches() {
        ReadNumbers numbers = new ReadNumbers(form.model().assessment().read());
        EntryPath<TrayTestEntry> shown = TrayPaths.TESTS.item(tests.index());
        List<Double> placesM = tests.placesM(tests.index());
        catches.show(
                placesM,
                numbers.firstOf(TrayPaths.TEST_CATCHES, shown, placesM.size()),
                TrayPaths.TEST_CATCHES.range(form.model().setup()).core().symbol(),
                typed < placesM.size() ? typed : -1);
    }

    private void longPass(@Nullable SinglePassTest line, @Nullable Double widthM) {
        longPass.show(
                line == null
                        ? List.of()
                        : List.of(new PatternPicture.Pattern(
                                form.words().text("trays.line.caught"), line.positionsM(), line.amountsG())),
                widthM);
    }

    /** The tray of a number is typed, from 0; −1: none. */
    void typing(int tray) {
        typed = tray;
        catches();
    }

    Node places() {
        return places;
    }

    Node passes() {
        return passes;
    }

    Node catchBars() {
        return catches;
    }

    Node verdict() {
        return verdict;
    }

    Node longPass() {
        return longPass;
    }

    Node switching() {
        return switching;
    }
}
