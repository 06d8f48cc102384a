package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.stage.Stage;
import org.evenfall.finding.Step;
import org.evenfall.setup.entry.Setup;
import org.evenfall.wizard.layout.Contrast;
import org.evenfall.wizard.layout.CutText;
import org.evenfall.wizard.layout.FirstFocus;
import org.evenfall.wizard.layout.FocusRings;
import org.evenfall.wizard.layout.Overlaps;
import org.evenfall.wizard.layout.RawKeys;
import org.evenfall.wizard.layout.ScrollBars;
import org.evenfall.wizard.layout.Unlabelled;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Every prompt, empty and as full as can be, in small and large windows: all of it can be read and reached. */
@ExtendWith(ApplicationExtension.class)
class PromptLayoutTest {

    private static SharedWindow shared;

    private WizardWindow window;
    private Stage stage;

    @Start
    void start(Stage shown) throws Exception {
        if (shared == null) {
            shared = SharedWindow.make();
        }
        stage = shown;
        window = shared.show(stage, 1366, 768);
    }

    @AfterAll
    static void forget() {
        shared = null;
    }

    @Test
    void fitsTheSmallestWindow() throws Exception {
        fits(WindowSize.SMALLEST);
    }

    @Test
    void fitsALaptop() throws Exception {
        fits(WindowSize.LAPTOP);
    }

    @Test
    void fitsALaptopWithLargeText() throws Exception {
        fits(WindowSize.LARGE_TEXT);
    }

    @Test
    void fitsAHall() throws Exception {
        fits(WindowSize.HALL);
    }

    @Test
    void canBeReadInLight() throws Exception {
        assertThat(colours(false)).isEmpty();
    }

    @Test
    void canBeReadInDark() throws Exception {
        assertThat(colours(true)).isEmpty();
    }

    private void fits(WindowSize size) throws Exception {
        WaitForAsyncUtils.asyncFx(() -> size.set(window, stage)).get();
        List<String> faults = new ArrayList<>();
        for (Map.Entry<String, Setup> setup : setups().entrySet()) {
            open(setup.getValue());
            for (PromptPage page : window.shell().pages()) {
                String where = page.prompt().id() + ", " + size + ", " + setup.getKey() + ": ";
                show(page, root -> {
                    FirstFocus.wrong(page, window.scene().getFocusOwner()).forEach(fault -> faults.add(where + fault));
                    ScrollBars.sideways(root).forEach(fault -> faults.add(where + fault));
                    if (size == WindowSize.LAPTOP && page.step().number() <= Step.HEIGHT.number()) {
                        ScrollBars.upright(root).forEach(fault -> faults.add(where + fault));
                    }
                    CutText.in(root).forEach(fault -> faults.add(where + fault));
                    Overlaps.in(root).forEach(fault -> faults.add(where + fault));
                    Unlabelled.in(root).forEach(fault -> faults.add(where + fault));
                    RawKeys.in(root).forEach(fault -> faults.add(where + fault));
                });
            }
        }
        assertThat(faults).isEmpty();
    }

    private List<String> colours(boolean dark) throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    WindowSize.LAPTOP.set(window, stage);
                    window.dark(dark);
                })
                .get();
        List<String> faults = new ArrayList<>();
        for (Map.Entry<String, Setup> setup : setups().entrySet()) {
            open(setup.getValue());
            for (PromptPage page : window.shell().pages()) {
                String where = page.prompt().id() + ", " + (dark ? "dark" : "light") + ", " + setup.getKey() + ": ";
                show(page, root -> {
                    Contrast.in(root).forEach(fault -> faults.add(where + fault));
                    FocusRings.in(root).forEach(fault -> faults.add(where + fault));
                });
            }
        }
        return faults;
    }

    private static Map<String, Setup> setups() throws Exception {
        return Map.of("empty", Setup.EMPTY, "worst case", WorstCase.setup());
    }

    private void open(Setup setup) throws Exception {
        WaitForAsyncUtils.asyncFx(() -> window.model().open(setup)).get();
    }

    /** Brings a prompt to the front, lays it out and looks at it; one that is not asked is left out. */
    private void show(PromptPage page, Consumer<Node> look) throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    if (page.prompt().asked()) {
                        window.shell().show(page.prompt().id());
                        // scroll bars change the room, which changes what has room
                        for (int i = 0; i < 3; i++) {
                            window.scene().getRoot().applyCss();
                            window.scene().getRoot().layout();
                        }
                        look.accept(window.scene().getRoot());
                    }
                })
                .get();
    }
}
