package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.PassEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.LogPaths;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** One key hides names and prices in every view and shows them again; the setup and what is typed stay as they are. */
@ExtendWith(ApplicationExtension.class)
class HiddenNamesTest {

    private static final String FARM = "Thornmarsh Farm";
    private static final String FIELD = "Far Bank";
    private static final String MEASURER = "R. Fenwick";
    private static final String SIGNER = "A. Marlow";
    private static final String LOGGED_FIELD = "Heron Corner";
    private static final String NOTE = "shared with a neighbour";
    private static final PassEntry LOGGED = PassEntry.EMPTY
            .withField(LOGGED_FIELD)
            .withNote(NOTE)
            .withArea(EnteredQuantity.parse("12.5 ha"))
            .withProductDrawn(EnteredQuantity.parse("2450 kg"));
    private static final String PRICE = "563";
    private static final String SENTENCE = "Names and prices hidden. Ctrl+H shows them.";

    private WizardWindow window;

    @Start
    void start(Stage stage) throws Exception {
        Path folder = Files.createTempDirectory("evenfall-hidden");
        Path season = new UserFolder(folder).season(2027);
        Files.createDirectories(season);
        Path copy = season.resolve("demo.json");
        Files.copy(Path.of("demo", "setup.json"), copy);
        window = SharedWindow.whole(new WizardWindow(Stage0.context(folder), Optional.of(copy)));
        stage.setWidth(1366);
        stage.setHeight(768);
        window.model().change(setup -> {
            Setup next = StartPaths.FARM.path().set(SharedWindow.cautionsRead(window, setup), FARM);
            next = StartPaths.FIELD.path().set(next, FIELD);
            next = LogPaths.PASSES.path().set(next, List.of(LOGGED));
            next = CardPaths.MEASURED_BY.path().set(next, MEASURER);
            next = CardPaths.SIGNED_BY.path().set(next, SIGNER);
            return RatePaths.PRICE.path().set(next, RatePaths.PRICE.get(next).withText(PRICE));
        });
        window.saver().save();
        window.show(stage);
    }

    /** All that is drawn or heard on the pages of all prompts. */
    private Set<String> texts(FxRobot robot) {
        Set<String> texts = new TreeSet<>();
        for (PromptPage page : window.shell().pages()) {
            if (page.prompt().asked()) {
                robot.interact(() -> window.shell().show(page.prompt().id()));
                WaitForAsyncUtils.waitForFxEvents();
                robot.interact(
                        () -> collect(window.scene().getRoot(), page.prompt().id(), texts));
            }
        }
        return texts;
    }

    private static void collect(Node node, String prompt, Set<String> texts) {
        if (node.isVisible()) {
            if (node instanceof Text text) {
                texts.add(prompt + ": " + text.getText());
            }
            if (node.getAccessibleText() != null) {
                texts.add(prompt + ": " + node.getAccessibleText());
            }
            if (node instanceof Parent parent) {
                parent.getChildrenUnmodifiable().forEach(child -> collect(child, prompt, texts));
            }
        }
    }

    private void press(FxRobot robot) {
        robot.push(KeyCode.CONTROL, KeyCode.H);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void noNameAndNoPriceIsOnAnyPageUntilTheyAreShownAgain(FxRobot robot) {
        Setup setup = window.model().setup();
        assertThat(texts(robot))
                .anyMatch(text -> text.startsWith("0a") && text.contains(FARM))
                .anyMatch(text -> text.equals("0b: " + FARM))
                .anyMatch(text -> text.equals("5c: " + PRICE))
                .anyMatch(text -> text.contains(window.shell().words().text("picture.money.axis")))
                .anyMatch(text -> text.startsWith("7a") && text.contains(FIELD))
                .anyMatch(text -> text.equals("7b: " + SIGNER))
                .anyMatch(text -> text.startsWith("7d: " + LOGGED_FIELD + ", pass 1 of 3: "))
                .anyMatch(text -> text.startsWith("7d: ") && text.contains(": " + LOGGED_FIELD + " "))
                .anyMatch(text -> text.equals("7d: " + NOTE))
                .noneMatch(text -> text.contains(SENTENCE));
        press(robot);
        assertThat(texts(robot))
                .noneMatch(text -> text.contains(FARM) || text.contains(FIELD))
                .noneMatch(text -> text.contains(LOGGED_FIELD) || text.contains(NOTE))
                .noneMatch(text -> text.contains(MEASURER) || text.contains(SIGNER))
                .noneMatch(text -> text.contains(PRICE)
                        || text.contains(window.shell().words().text("picture.money.axis")))
                .noneMatch(text -> text.contains("demo.json"))
                .anyMatch(text -> text.equals("0b: " + "\u2022".repeat(FARM.length())))
                .anyMatch(text -> text.contains(SENTENCE))
                .anyMatch(text -> text.startsWith("7c") && text.contains("The card is hidden"));
        assertThat(window.model().setup()).as("nothing is kept in the setup").isEqualTo(setup);
        press(robot);
        assertThat(texts(robot))
                .anyMatch(text -> text.startsWith("0a") && text.contains(FARM))
                .anyMatch(text -> text.equals("5c: " + PRICE))
                .anyMatch(text -> text.equals("7b: " + SIGNER))
                .noneMatch(text -> text.contains(SENTENCE) || text.contains("The card is hidden"));
    }

    @Test
    void whatIsTypedWhileHiddenIsKeptAndTheKeyTakesNoLetter(FxRobot robot) {
        robot.interact(() -> window.shell().show("0b"));
        WaitForAsyncUtils.waitForFxEvents();
        TextField farm = robot.lookup("#/start/farm").queryAs(TextField.class);
        robot.interact(() -> {
            farm.requestFocus();
            farm.end();
        });
        press(robot);
        assertThat(farm.isFocused()).isTrue();
        robot.type(KeyCode.X);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.model().setup().start().farm()).isEqualTo(FARM + "x");
        press(robot);
        assertThat(farm.getText()).isEqualTo(FARM + "x");
    }

    @Test
    void aNoticeSaysNoNameEither(FxRobot robot) {
        press(robot);
        robot.interact(() -> window.shell().showNotice("Saved for " + FARM + "."));
        Set<String> texts = new TreeSet<>();
        robot.interact(() -> collect(window.scene().getRoot(), "", texts));
        assertThat(texts).noneMatch(text -> text.contains(FARM)).anyMatch(text -> text.contains("Saved for"));
    }
}
