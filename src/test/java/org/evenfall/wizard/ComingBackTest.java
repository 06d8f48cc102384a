package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.Rechecked;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The ways back from Home to a setup that was finished before. */
@ExtendWith(ApplicationExtension.class)
class ComingBackTest {

    private final SetupStore store = new SetupStore(new SetupJson());

    private UserFolder user;
    private Path file;
    private Setup finished;
    private WizardWindow window;
    private Typing typing;

    @Start
    void start(Stage stage) throws Exception {
        user = new UserFolder(Files.createTempDirectory("evenfall-back"));
        file = user.season(2027).resolve("setup.json");
        // all of the demo was done the day before
        Setup demo = new SetupJson()
                .read(Files.readString(Path.of("demo", "setup.json")).replace("2027-03-18", "2027-03-17"), "demo");
        finished = demo.withGuide(demo.guide().withInvented(Setup.EMPTY.guide().invented()))
                .withCard(demo.card().withRevision(1));
        store.save(finished, file);
        window = SharedWindow.whole(new WizardWindow(Stage0.context(user.root()), Optional.empty()));
        window.show(stage);
    }

    @BeforeEach
    void keyboard(FxRobot robot) {
        typing = new Typing(robot);
    }

    private Setup setup() {
        return window.model().setup();
    }

    private void choose(FxRobot robot, String menu, String start) {
        MenuButton button = (MenuButton) typing.node(menu);
        robot.interact(() -> {
            button.getOnShowing().handle(null);
            List<MenuItem> items = button.getItems();
            items.stream()
                    .filter(item -> item.getText().startsWith(start))
                    .findFirst()
                    .orElseThrow()
                    .fire();
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Two weights a run, nothing else: then all answers before the card, with what was checked again on it. */
    @Test
    void theRateIsCheckedAgainWithTheBucketAlone(FxRobot robot) throws Exception {
        choose(robot, "start.rateAgain", "Thornmarsh Farm");
        assertThat(window.shell().prompt()).isEqualTo("5e");
        assertThat(setup().card().revision()).isEqualTo(2);
        int last = setup().rate().bucketTests().size() - 1;
        assertThat(last).isEqualTo(finished.rate().bucketTests().size());
        BucketEntry before = finished.rate().bucketTests().get(last - 1);
        BucketEntry begun = setup().rate().bucketTests().get(last);
        assertThat(begun.openingLeft()).isEqualTo(before.openingLeft());
        assertThat(begun.date()).isEqualTo("2027-03-18");
        robot.interact(() -> window.model()
                .change(setup -> setup.withRate(setup.rate()
                        .withBucketTests(Stream.concat(
                                        finished.rate().bucketTests().stream(),
                                        Stream.of(begun.withTime(before.time())
                                                .withLeft(before.left())
                                                .withRight(before.right())))
                                .toList()))));
        robot.interact(() -> typing.node("shell.next").requestFocus());
        robot.type(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.shell().prompt()).as("the way on leads to the card").isEqualTo("7a");
        Rechecked since = Rechecked.of(Assessor.assess(setup()));
        assertThat(since).isNotNull();
        assertThat(since.previousDate()).isEqualTo("2027-03-17");
        assertThat(since.part(Rechecked.What.RATE).state()).isEqualTo(Rechecked.State.AGAIN);
        assertThat(since.part(Rechecked.What.TRAY_TEST).state()).isEqualTo(Rechecked.State.HOLDS);
        window.saver().save();
        assertThat(store.read(file)).as("the old one stays").isEqualTo(finished);
        assertThat(store.read(window.saver().file()).card().revision()).isEqualTo(2);
    }

    @Test
    void thePassesOfASetupAreLogged(FxRobot robot) throws Exception {
        choose(robot, "start.logPass", "Thornmarsh Farm");
        assertThat(window.shell().prompt()).isEqualTo("7d");
        assertThat(window.saver().file()).isEqualTo(file);
        typing.type("/log/passes/0/area", "8");
        typing.type("/log/passes/0/productDrawn", "1400");
        window.saver().save();
        assertThat(store.read(file).log().passes())
                .singleElement()
                .satisfies(pass -> assertThat(pass.area()).isEqualTo(EnteredQuantity.parse("8 ha")));
    }

    @Test
    void theNextSeasonBeginsFromThisOne(FxRobot robot) {
        choose(robot, "start.nextSeason", "Thornmarsh Farm");
        assertThat(setup().start().season()).isEqualTo("2028");
        assertThat(setup().machine()).isEqualTo(finished.machine());
        assertThat(setup().trays().tests()).isEmpty();
        assertThat(setup().card().revision()).isZero();
        window.saver().save();
        assertThat(window.saver().file().getParent()).isEqualTo(user.season(2028));
    }

    @Test
    void theRecordOfASeasonIsATableAndPages(FxRobot robot) throws Exception {
        Files.writeString(user.season(2027).resolve("damaged.json"), "{");
        choose(robot, "start.record", "2027");
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> Files.exists(user.records().resolve("record-2027.pdf")));
        assertThat(user.records().resolve("record-2027.csv")).content().startsWith("date,farm");
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> typing.words().stream().anyMatch(words -> words.contains("damaged.json")));
    }
}
