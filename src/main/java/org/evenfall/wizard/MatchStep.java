package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.PatternOverlay;
import org.evenfall.result.MatchLines;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.MatchPicture;
import org.evenfall.wizard.picture.PatternPicture;
import org.evenfall.wizard.picture.PictureStack;
import org.evenfall.wizard.step.match.ClosestPrompt;
import org.evenfall.wizard.step.match.StartSettingsPrompt;
import org.evenfall.wizard.step.match.TestedProductsPrompt;
import org.evenfall.wizard.step.match.TodayPrompt;

/** Step 2: the closest tested product and the settings to start from. */
final class MatchStep implements StepView {

    private final Form form;
    private final SetupDocument document;
    private final Lazy<PictureStack> picture = new Lazy<>(this::picture);

    MatchStep(Form form, SetupDocument document) {
        this.form = form;
        this.document = document;
    }

    /** The pictures of the step, made when they are first shown; they follow the setup. */
    private PictureStack picture() {
        MatchPicture match = new MatchPicture(form.words());
        PatternPicture pattern = new PatternPicture(form.words());
        form.follow(() -> {
            match.show(
                    form.model().assessment().match(),
                    form.model().assessment().product(),
                    form.model().setup().product().name());
            pattern.show(overlaid(), form.model().assessment().tramlineWidthM());
        });
        return new PictureStack(match, pattern);
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
    public List<Prompt> prompts() {
        return List.of(
                new TodayPrompt(form, picture),
                new TestedProductsPrompt(() -> new LibraryForm(form, document).node(), picture),
                new ClosestPrompt(form, picture),
                new StartSettingsPrompt(form, picture));
    }

    @Override
    public String result() {
        MatchResult match = form.model().assessment().match();
        return match == null ? "" : form.words().choice(match.verdict());
    }
}
