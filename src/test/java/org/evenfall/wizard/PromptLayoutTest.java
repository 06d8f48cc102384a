package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.stage.Stage;
import org.evenfall.setup.entry.Setup;
import org.evenfall.wizard.layout.Contrast;
import org.evenfall.wizard.layout.CutText;
import org.evenfall.wizard.layout.FirstFocus;
import org.evenfall.wizard.layout.FocusRings;
import org.evenfall.wizard.layout.Overlaps;
import org.evenfall.wizard.layout.RawKeys;
import org.evenfall.wizard.layout.ScrollBars;
import org.evenfall.wizard.layout.SmallText;
import org.evenfall.wizard.layout.Unlabelled;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
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

    @ParameterizedTest
    @FieldSource("org.evenfall.wizard.WindowSize#HALLS")
    void fitsAHallWhereAllCanBeReadFromTheBack(WindowSize screen) throws Exception {
        fits(screen);
    }

    @Test
    void canBeReadInLight() throws Exception {
        canBeRead(false);
    }

    @Test
    void canBeReadInDark() throws Exception {
        canBeRead(true);
    }

    @Test
    void fitsTheLargestHall() throws Exception {
        WindowSize size = WindowSize.LARGEST_HALL;
        Set<String> faults = new LinkedHashSet<>();
        for (Filling filling : List.of(Filling.EMPTY, Filling.WORST)) {
            Setup setup = filling.setup();
            WaitForAsyncUtils.asyncFx(() -> {
                        WizardWindow large = SharedWindow.unshown(size);
                        large.model().open(SharedWindow.cautionsRead(large, setup));
                        for (PromptPage page : large.shell().pages()) {
                            if (page.prompt().asked()) {
                                SharedWindow.arrange(large, page.prompt().id());
                                add(faults, page, size + ", " + filling, faults(large, page, size));
                            }
                        }
                        return null;
                    })
                    .get();
        }
        assertThat(faults).isEmpty();
    }

    private void fits(WindowSize size) throws Exception {
        WaitForAsyncUtils.asyncFx(() -> size.set(window, stage)).get();
        each(size.toString(), page -> faults(window, page, size));
    }

    private static List<String> faults(WizardWindow window, PromptPage page, WindowSize size) {
        Node root = window.scene().getRoot();
        List<String> found = new ArrayList<>();
        found.addAll(FirstFocus.wrong(page, window.scene().getFocusOwner()));
        found.addAll(ScrollBars.horizontal(root));
        if (size.equals(WindowSize.LAPTOP)) {
            found.addAll(ScrollBars.upright(root));
        }
        found.addAll(CutText.in(root));
        found.addAll(Overlaps.in(root));
        found.addAll(Unlabelled.in(root));
        found.addAll(RawKeys.in(root));
        if (size.projector()) {
            found.addAll(SmallText.in(root));
        }
        return found;
    }

    private static void add(Set<String> faults, PromptPage page, String how, List<String> found) {
        found.stream()
                .filter(fault -> !KnownFaults.known(page.prompt().id(), fault))
                .map(fault -> page.prompt().id() + ", " + how + ": " + fault)
                .forEach(faults::add);
    }

    private void canBeRead(boolean dark) throws Exception {
        WaitForAsyncUtils.asyncFx(() -> window.dark(dark)).get();
        each(dark ? "dark" : "light", page -> {
            Node root = window.scene().getRoot();
            List<String> found = new ArrayList<>(Contrast.in(root));
            found.addAll(FocusRings.in(root));
            return found;
        });
    }

    /** Looks at every prompt that is asked, in an empty setup and in the fullest. */
    private void each(String how, Function<PromptPage, List<String>> check) throws Exception {
        Set<String> faults = new LinkedHashSet<>();
        for (Filling filling : List.of(Filling.EMPTY, Filling.WORST)) {
            Setup setup = filling.setup();
            WaitForAsyncUtils.asyncFx(() -> window.model().open(SharedWindow.cautionsRead(window, setup)))
                    .get();
            for (PromptPage page : window.shell().pages()) {
                if (page.prompt().asked()) {
                    Pulses.look(
                            window.scene(),
                            () -> window.shell().show(page.prompt().id()),
                            () -> add(faults, page, how + ", " + filling, check.apply(page)));
                }
            }
        }
        assertThat(faults).isEmpty();
    }
}
