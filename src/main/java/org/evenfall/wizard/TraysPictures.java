package org.evenfall.wizard;

import java.util.List;
import javafx.scene.Node;
import org.evenfall.setup.SinglePassTest;
import org.evenfall.setup.TraysResult;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.picture.CvPicture;
import org.evenfall.wizard.picture.PatternPicture;
import org.evenfall.wizard.picture.PictureStack;
import org.evenfall.wizard.picture.TrayBarsPicture;
import org.evenfall.wizard.picture.TrayPlanPicture;
import org.evenfall.wizard.step.trays.TrayTests;

/** The pictures of step 6; each follows the setup. */
final class TraysPictures {

    private final Form form;
    private final TrayTests tests;
    private final TrayPlanPicture places;
    private final TrayPlanPicture passes;
    private final TrayBarsPicture catches;
    private final PictureStack verdict;
    private final TrayBarsPicture bars;
    private final CvPicture cv;
    private final PatternPicture longPass;
    private final TrayPlanPicture switching;

    TraysPictures(Form form, TrayTests tests) {
        this.form = form;
        this.tests = tests;
        this.places = new TrayPlanPicture(form.words());
        this.passes = new TrayPlanPicture(form.words());
        this.switching = new TrayPlanPicture(form.words());
        this.catches = new TrayBarsPicture(form.words());
        this.bars = new TrayBarsPicture(form.words());
        this.cv = new CvPicture(form.words());
        this.verdict = new PictureStack(bars, cv);
        this.longPass = new PatternPicture(form.words());
        form.follow(this::show);
    }

    private void show() {
        TraysResult trays = form.model().assessment().trays();
        places.show(trays.layout());
        passes.show(trays.layout());
        switching.show(trays.layout());
        catches.show(trays.comparable());
        bars.show(trays.comparable());
        cv.show(trays.comparable(), trays.advice());
        SinglePassTest line = trays.line();
        longPass.show(
                line == null
                        ? List.of()
                        : List.of(new PatternPicture.Pattern(
                                form.words().text("trays.line.caught"), line.positionsM(), line.amountsG())),
                form.model().assessment().tramlineWidthM());
    }

    /** The tray of a number is typed, from 0; −1: none. */
    void typing(int tray) {
        // for the picture of the catches
    }

    Node places() {
        return places;
    }

    Node passes() {
        return passes;
    }

    Node catches() {
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
