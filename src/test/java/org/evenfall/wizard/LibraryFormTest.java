package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.stage.Stage;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.TestedProductEntry;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The library of tested products by keyboard, in the demo of an invented farm. */
@ExtendWith(ApplicationExtension.class)
class LibraryFormTest {

    private static SharedWindow shared;

    private WizardWindow window;
    private Typing typing;

    @Start
    void start(Stage stage) throws Exception {
        if (shared == null) {
            shared = SharedWindow.make();
        }
        window = shared.show(stage, 1280, 1000);
    }

    @AfterAll
    static void forget() {
        shared = null;
    }

    @BeforeEach
    void front(FxRobot robot) {
        typing = new Typing(robot);
        robot.interact(() -> window.shell().go(Step.MATCH.number()));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private List<TestedProductEntry> library() {
        return window.model().setup().match().library();
    }

    @Test
    void oneIsAddedByHandWithItsSieveClassesAndRankedAtOnce(FxRobot robot) throws Exception {
        int before = library().size();
        typing.press("library.add");
        String at = "/match/library/" + before;
        typing.type(at + "/name", "Urea from the co-operative");
        typing.press(at + "/form/GRANULAR_UREA");
        typing.type(at + "/width", "28");
        typing.type(at + "/bulkDensity", "0,75");
        typing.typeOn(at + "/apertures/0", "2.0", "3.15", "4.5");
        typing.typeOn(at + "/shares/0", "3", "48", "46", "3");
        typing.type(at + "/settings/levers/long vane", "8");
        TestedProductEntry added = library().get(before);
        assertThat(added.id()).isNotBlank();
        assertThat(added.shares()).hasSize(4);
        assertThat(added.settings().levers()).containsEntry("long vane", new EnteredQuantity("8", Unit.NONE));
        assertThat(window.model().assessment().match().ranked())
                .anyMatch(ranked -> ranked.name().equals("Urea from the co-operative")
                        && ranked.own().d50Mm() != null
                        && ranked.own().d50Mm() > 3
                        && ranked.own().d50Mm() < 3.3);
        picture(robot);
        // what cannot be is reported where it is typed
        typing.type(at + "/bulkDensity", "7.5");
        assertThat(typing.words()).anyMatch(word -> word.contains("7.5") || word.contains("7,5"));
        typing.press("library.done");
        assertThat(typing.there(at + "/name")).isFalse();
    }

    private void picture(FxRobot robot) throws Exception {
        robot.interact(() -> typing.node("library.search").requestFocus());
        Snapshot.of(robot, window.shell(), "library");
    }

    @Test
    void theSearchFindsAndTheOrderSorts(FxRobot robot) {
        typing.type("library.search", "prilled");
        int prilled = library()
                .indexOf(library().stream()
                        .filter(entry -> entry.name().equals("Prilled urea"))
                        .findFirst()
                        .orElseThrow());
        assertThat(typing.there("library.edit/" + prilled)).isTrue();
        assertThat(typing.there("library.edit/" + (prilled == 0 ? 1 : 0))).isFalse();
        typing.type("library.search", "no such thing");
        assertThat(typing.words()).contains("No tested product holds these words.");
        assertThat(typing.there("library.edit/0")).isFalse();
    }

    @Test
    void whatIsDeletedCanBePutBackEvenAfterOtherChanges(FxRobot robot) {
        List<TestedProductEntry> before = library();
        typing.press("library.delete/2");
        assertThat(library()).hasSize(before.size() - 1).doesNotContain(before.get(2));
        assertThat(typing.words()).contains("“" + before.get(2).name() + "” is deleted.");
        typing.type("/match/settings/levers/long vane", "10");
        typing.press("library.edit/0");
        typing.press("library.undo");
        assertThat(typing.there("/match/library/0/name")).isFalse();
        assertThat(library()).isEqualTo(before);
        assertThat(window.model()
                        .setup()
                        .match()
                        .settings()
                        .levers()
                        .get("long vane")
                        .text())
                .isEqualTo("10");
    }

    @Test
    void theProductJustProvedIsKeptOnce(FxRobot robot) {
        int before = library().size();
        typing.press("library.keep");
        assertThat(library()).hasSize(before + 1);
        TestedProductEntry kept = library().get(before);
        assertThat(kept.source()).startsWith("own tray test");
        assertThat(kept.shares()).hasSizeGreaterThan(2);
        assertThat(typing.node("library.keep").isDisabled()).isTrue();
        assertThat(window.model().assessment().match().ranked())
                .filteredOn(ranked -> ranked.id().equals(kept.id()))
                .allMatch(ranked -> Math.abs(ranked.throwDifference().metres()) < 0.02)
                .hasSize(1);
    }

    @Test
    void aLargeLibraryListsTheFirstAndAnEmptyOneIsNormal(FxRobot robot) {
        List<TestedProductEntry> many = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            many.add(library().get(0).withId("p" + i).withName("Product " + i));
        }
        robot.interact(() ->
                window.model().change(setup -> setup.withMatch(setup.match().withLibrary(many))));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(typing.words()).contains("260 more. Search to find them.");
        robot.interact(() ->
                window.model().change(setup -> setup.withMatch(setup.match().withLibrary(List.of()))));
        assertThat(typing.words()).anyMatch(word -> word.startsWith("Nothing is here yet."));
    }
}
