package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.control.Button;
import javafx.stage.Stage;
import org.evenfall.setup.CatchKindChange;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.LeverEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SievingEntry;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.VaneEntry;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** What is removed from the page no longer follows the setup: the number of followers depends on the page alone. */
@ExtendWith(ApplicationExtension.class)
class ListenersTest {

    private WizardWindow window;
    private FxRobot robot;

    @Start
    void start(Stage stage) throws Exception {
        // never shown: nothing of this depends on a screen
        window = SharedWindow.make().window();
    }

    @BeforeEach
    void remember(FxRobot given) {
        robot = given;
    }

    private int followers() {
        return window.model().followers();
    }

    private void change(java.util.function.UnaryOperator<Setup> how) {
        robot.interact(() -> window.model().change(how));
    }

    @Test
    void anEditorOfTheLibraryOpenedAgainAndAgain() {
        int closed = followers();
        press("library.edit/0");
        int open = followers();
        assertThat(open).isGreaterThan(closed);
        for (int wanted : new int[] {10, 50, 100}) {
            robot.interact(() -> {
                for (int i = 0; i < wanted; i++) {
                    fire("library.edit/" + i % 2);
                }
            });
            assertThat(followers()).as(wanted + " openings").isEqualTo(open);
        }
        press("library.done");
        assertThat(followers()).isEqualTo(closed);
    }

    private void press(String id) {
        robot.interact(() -> fire(id));
    }

    private void fire(String id) {
        ((Button) Nodes.find(window.shell(), node -> id.equals(node.getId())).orElseThrow()).fire();
    }

    @Test
    void theWayOfReadingChangedAgainAndAgain() {
        int before = followers();
        for (int i = 0; i < 10; i++) {
            change(setup -> setup.withTrays(CatchKindChange.to(setup.trays(), AmountKind.VOLUME)));
            change(setup -> setup.withTrays(CatchKindChange.to(setup.trays(), AmountKind.MASS)));
        }
        assertThat(followers()).isEqualTo(before);
    }

    @Test
    void rowsTestsSamplesAndLeversAddedAndRemoved() {
        int before = followers();
        Setup demo = window.model().setup();
        for (int i = 0; i < 3; i++) {
            change(setup -> setup.withMachineCheck(setup.machineCheck()
                    .withVanes(List.of(VaneEntry.EMPTY, VaneEntry.EMPTY, VaneEntry.EMPTY, VaneEntry.EMPTY))));
            change(setup -> setup.withMachine(setup.machine()
                    .withLevers(List.of(LeverEntry.EMPTY.withLabel("one"), LeverEntry.EMPTY.withLabel("two")))));
            change(setup -> setup.withTrays(setup.trays().withTests(List.of(TrayTestEntry.EMPTY))));
            change(setup -> setup.withRate(setup.rate().withBucketTests(List.of())));
            change(setup -> setup.withProduct(
                    setup.product().withSievings(List.of(SievingEntry.EMPTY, SievingEntry.EMPTY, SievingEntry.EMPTY))));
            change(setup -> demo);
        }
        assertThat(followers()).isEqualTo(before);
    }
}
