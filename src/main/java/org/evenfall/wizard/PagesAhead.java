package org.evenfall.wizard;

import java.util.List;
import java.util.function.Predicate;
import javafx.animation.PauseTransition;
import javafx.scene.Scene;
import javafx.util.Duration;

/**
 * Looks at the pages that were not needed yet, one at a time, once the window is shown, so that none is waited for later.
 * Between two of them there is room for what the person does.
 */
final class PagesAhead {

    private static final Duration PAUSE = Duration.millis(60);

    /** Assumption: by then the first page is drawn, also on a slow computer. */
    private static final Duration BEFORE_THE_FIRST = Duration.millis(500);

    private final PauseTransition pause = new PauseTransition(BEFORE_THE_FIRST);
    private final List<PromptPage> pages;
    private final Predicate<PromptPage> kept;

    /** @param kept whether the content of a page stays; of the others only what is typed on them is kept */
    PagesAhead(List<PromptPage> pages, Predicate<PromptPage> kept) {
        this.pages = pages;
        this.kept = kept;
        pause.setOnFinished(event -> next());
    }

    void start() {
        pause.play();
    }

    void stop() {
        pause.stop();
    }

    /** Makes the next one; a window that is closed needs no more. */
    private void next() {
        Scene scene = pages.get(0).getScene();
        if (scene == null || scene.getWindow() == null || !scene.getWindow().isShowing()) {
            return;
        }
        pages.stream().filter(PromptPage::makeUnlessKnown).findFirst().ifPresent(page -> {
            if (kept.test(page)) {
                page.applyCss();
            } else {
                page.drop();
            }
            pause.setDuration(PAUSE);
            pause.playFromStart();
        });
    }
}
