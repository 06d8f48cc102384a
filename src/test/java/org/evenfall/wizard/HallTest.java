package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What the hall sees without a hand on the mouse: the picture and one result. */
@ExtendWith(ApplicationExtension.class)
class HallTest {

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

    static List<WindowSize> screens() {
        List<WindowSize> all = new ArrayList<>(WindowSize.HALLS);
        all.add(WindowSize.LARGEST_HALL);
        return all;
    }

    private void look(WindowSize screen, Setup setup, String prompt, Runnable check) throws Exception {
        if (screen.equals(WindowSize.LARGEST_HALL)) {
            WaitForAsyncUtils.asyncFx(() -> {
                        window = SharedWindow.unshown(screen);
                        window.model().open(SharedWindow.cautionsRead(window, setup));
                        SharedWindow.arrange(window, prompt);
                        check.run();
                        return null;
                    })
                    .get();
            return;
        }
        WaitForAsyncUtils.asyncFx(() -> {
                    screen.set(window, stage);
                    window.model().open(SharedWindow.cautionsRead(window, setup));
                })
                .get();
        Pulses.look(window.scene(), () -> window.shell().show(prompt), check);
    }

    /** Whether all of a node is in the part of the page that is not scrolled away. */
    private boolean inView(Node node) {
        Bounds place = node.localToScene(node.getLayoutBounds());
        Bounds view =
                window.shell().middle().localToScene(window.shell().middle().getLayoutBounds());
        return node.isVisible() && place.getHeight() > 0 && view.contains(place);
    }

    @ParameterizedTest
    @MethodSource("screens")
    void verdictInstructionItsButtonAndThePictureAreSeenAtOnce(WindowSize screen) throws Exception {
        Setup uneven = Filling.UNEVEN.setup();
        Setup toMend =
                uneven.withTrays(uneven.trays().withTests(uneven.trays().tests().subList(0, 1)));
        for (Setup setup : List.of(Filling.DEMO.setup(), uneven, toMend)) {
            List<String> unseen = new ArrayList<>();
            look(screen, setup, "6d", () -> {
                Node page = page("6d");
                for (String part : List.of(".result-figure", ".instruction", ".button.primary")) {
                    if (!inView(page.lookup(part))) {
                        unseen.add(part);
                    }
                }
                Node drawn = page("6d").prompt().picture();
                Bounds picture = drawn.localToScene(drawn.getLayoutBounds());
                assertThat(picture.getWidth()).isGreaterThan(0.35 * screen.widthPx());
                assertThat(picture.getMaxX()).isLessThanOrEqualTo(window.scene().getWidth());
                assertThat(picture.getMaxY()).isLessThanOrEqualTo(window.scene().getHeight());
            });
            assertThat(unseen)
                    .as(setup.start().farm() + ", " + setup.trays().tests().size() + " tests")
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("screens")
    void catchesAreInRowsOfSeven(WindowSize screen) throws Exception {
        Set<Double> firstRow = new TreeSet<>();
        List<Double> tops = new ArrayList<>();
        look(
                screen,
                Filling.DEMO.setup(),
                "6c",
                () -> page("6c").lookupAll(".catch-line .text-field").stream()
                        .filter(field ->
                                field instanceof TextField && field.getId().contains("catches"))
                        .forEach(field -> {
                            tops.add(field.localToScene(0, 0).getY());
                            assertThat(field.localToScene(field.getLayoutBounds())
                                            .getMaxX())
                                    .isLessThan(window.shell()
                                                    .middle()
                                                    .localToScene(0, 0)
                                                    .getX()
                                            + window.shell().middle().getWidth());
                        }));
        firstRow.add(tops.get(0));
        assertThat(tops).hasSizeGreaterThanOrEqualTo(7);
        assertThat(tops.subList(0, 7)).allMatch(firstRow::contains);
        assertThat(tops.stream().skip(7)).noneMatch(firstRow::contains);
    }

    private PromptPage page(String prompt) {
        return window.shell().pages().stream()
                .filter(page -> page.prompt().id().equals(prompt))
                .findFirst()
                .orElseThrow();
    }
}
