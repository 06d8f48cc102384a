package org.evenfall.wizard;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Step;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.PatternOverlay;
import org.evenfall.result.MatchLines;
import org.evenfall.setup.FirstGuess;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.TodayPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.VisibleWhen;
import org.evenfall.wizard.picture.MatchPicture;
import org.evenfall.wizard.picture.PatternPicture;
import org.evenfall.wizard.picture.PictureStack;

/** Step 2: the closest tested product and the settings to start from. */
final class MatchStep implements StepView {

    private final Form form;
    private final SetupDocument document;
    private final MatchPicture match;
    private final PatternPicture pattern;
    private final PictureStack picture;

    MatchStep(Form form, SetupDocument document) {
        this.form = form;
        this.document = document;
        this.match = new MatchPicture(form.words());
        this.pattern = new PatternPicture(form.words());
        this.picture = new PictureStack(match, pattern);
        form.follow(() -> {
            match.show(
                    form.model().assessment().match(),
                    form.model().assessment().product(),
                    form.model().setup().product().name());
            pattern.show(overlaid(), form.model().assessment().tramlineWidthM());
        });
    }

    /** The landing patterns of the product and of what it is compared with, both with the same settings. */
    private List<PatternPicture.Pattern> overlaid() {
        MatchResult result = form.model().assessment().match();
        PatternOverlay overlay = result == null ? null : result.overlay();
        if (overlay == null) {
            return List.of();
        }
        String name = form.model().setup().product().name();
        return List.of(
                new PatternPicture.Pattern(
                        name.isBlank() ? form.words().text("picture.match.product") : name,
                        overlay.positionsM(),
                        overlay.productPerM()),
                new PatternPicture.Pattern(
                        overlay.otherId().isEmpty()
                                ? form.words().text("picture.pattern.dense")
                                : MatchLines.name(form.words(), overlay.otherId(), overlay.otherName()),
                        overlay.positionsM(),
                        overlay.otherPerM()));
    }

    @Override
    public Step step() {
        return Step.MATCH;
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public String result() {
        MatchResult match = form.model().assessment().match();
        return match == null ? "" : form.words().choice(match.verdict());
    }

    @Override
    public Node entries() {
        Node settings = SettingsForm.of(form, MatchPaths.SETTINGS.only());
        return new VBox(
                new RankedForm(form).node(),
                form.group(
                        "match.without",
                        form.row(
                                form.choice(MatchPaths.START_WITHOUT_REFERENCE),
                                form.choice(MatchPaths.TRAY_TEST_ONLY))),
                form.group("match.settings", form.sentence("match.settingsWhy"), settings, firstGuess()),
                today(),
                new LibraryForm(form, document).node());
    }

    /** Today's settings with the product spread so far. */
    private Node today() {
        return form.group(
                "today.title",
                form.sentence("today.how"),
                form.row(
                        form.choice(TodayPaths.FORM),
                        form.quantity(TodayPaths.BULK_DENSITY),
                        form.choice(TodayPaths.EVENNESS),
                        form.quantity(TodayPaths.TESTED_CV)),
                SettingsForm.of(form, TodayPaths.SETTINGS.only()));
    }

    /** Fills in the first guess, while there is one. */
    private Node firstGuess() {
        Button button = form.button(
                "match.start.fill",
                () -> form.model()
                        .change(setup -> FirstGuess.filledIn(setup, form.model().assessment(), form::numberText)));
        button.setId("match.start.fill");
        return VisibleWhen.when(
                form,
                () -> form.model().assessment().findings().stream()
                        .anyMatch(finding -> finding.source().equals(FirstGuess.SOURCE)),
                button);
    }
}
