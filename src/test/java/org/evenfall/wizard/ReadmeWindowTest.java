package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.stage.Stage;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.FarmShelf;
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

/** What the README says of the guide and of coming back, where no other test of the window tries it. */
@ExtendWith(ApplicationExtension.class)
class ReadmeWindowTest {

    private final SetupStore store = new SetupStore(new SetupJson());

    private UserFolder user;
    private Path file;
    private Setup finished;
    private WizardWindow window;
    private Typing typing;

    @Start
    void start(Stage stage) throws Exception {
        user = new UserFolder(Files.createTempDirectory("evenfall-readme"));
        file = user.season(2027).resolve("setup.json");
        Setup demo = store.read(Path.of("demo", "setup.json"));
        finished = demo.withGuide(demo.guide().withInvented(Setup.EMPTY.guide().invented()))
                .withCard(demo.card().withRevision(1));
        store.save(finished, file);
        new FarmShelf(store, user).keep(finished);
        window = SharedWindow.whole(new WizardWindow(Stage0.context(user.root()), Optional.empty()));
        stage.setWidth(1366);
        stage.setHeight(768);
        window.show(stage);
    }

    @BeforeEach
    void keyboard(FxRobot robot) {
        typing = new Typing(robot);
    }

    private void open(FxRobot robot) {
        robot.interact(() -> window.document().open(file));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void show(FxRobot robot, String prompt) {
        robot.interact(() -> window.shell().show(prompt));
        WaitForAsyncUtils.waitForFxEvents();
        typing.readCautions();
    }

    @Test
    void everyPageHasItsPicture(FxRobot robot) {
        open(robot);
        List<String> without = new ArrayList<>();
        int looked = 0;
        for (PromptPage page : window.shell().pages()) {
            if (page.prompt().asked() && !page.prompt().alone()) {
                show(robot, page.prompt().id());
                Node picture = page.prompt().picture();
                Bounds place = picture.localToScene(picture.getLayoutBounds());
                if (!picture.isVisible()
                        || picture.getScene() == null
                        || place.getWidth() < 100
                        || place.getHeight() < 50) {
                    without.add(page.prompt().id() + " " + place);
                }
                looked++;
            }
        }
        assertThat(without).isEmpty();
        assertThat(looked).isGreaterThan(30);
    }

    @Test
    void everyAnswerOfTheCheckPageLeadsBack(FxRobot robot) {
        open(robot);
        List<String> prompts = new ArrayList<>();
        robot.interact(() -> window.shell().review().forEach(review -> prompts.add(review.prompt())));
        assertThat(prompts).hasSizeGreaterThan(25);
        for (String prompt : prompts) {
            show(robot, "7a");
            robot.interact(() -> ((Button) typing.node("check-" + prompt)).fire());
            WaitForAsyncUtils.waitForFxEvents();
            typing.readCautions();
            assertThat(window.shell().prompt()).isEqualTo(prompt);
        }
    }

    @Test
    void theTestedProductsOfAMachineAreCounted(FxRobot robot) {
        show(robot, "0a");
        int atWidth = (int) finished.match().library().stream()
                .filter(product -> product.width().toString().equals("28 m"))
                .count();
        assertThat(atWidth).isPositive();
        assertThat(typing.words())
                .anyMatch(words ->
                        words.startsWith(finished.machine().name() + ": ") && words.contains(atWidth + " for 28 m"));
    }

    /** The next revision of all: in a new file, with everything kept; the old file stays. */
    @Test
    void allIsCheckedAgain(FxRobot robot) throws Exception {
        MenuButton button = (MenuButton) typing.node("start.again");
        robot.interact(() -> {
            button.getOnShowing().handle(null);
            button.getItems().stream()
                    .filter(item -> item.getText().startsWith("Thornmarsh Farm"))
                    .findFirst()
                    .map(MenuItem.class::cast)
                    .orElseThrow()
                    .fire();
        });
        WaitForAsyncUtils.waitForFxEvents();
        Setup again = window.model().setup();
        assertThat(again.card().revision()).isEqualTo(2);
        assertThat(again.card().previousDate()).isEqualTo(finished.card().date());
        assertThat(again.trays().tests()).hasSameSizeAs(finished.trays().tests());
        window.saver().save();
        assertThat(window.saver().file()).isNotEqualTo(file);
        assertThat(store.read(file)).as("the old one stays").isEqualTo(finished);
    }
}
