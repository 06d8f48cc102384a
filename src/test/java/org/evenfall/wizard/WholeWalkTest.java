package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.StepState;
import org.evenfall.sign.PdfVerifier;
import org.evenfall.sign.VerifyResult;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The whole wizard by keyboard: from an empty start to a signed card, and through typing mistakes. */
@ExtendWith(ApplicationExtension.class)
class WholeWalkTest {

    private Path folder;
    private WizardWindow window;

    @Start
    void start(Stage stage) throws Exception {
        folder = Files.createTempDirectory("evenfall-walk");
        window = SharedWindow.whole(new WizardWindow(Stage0.context(folder), Optional.empty()));
        stage.setWidth(1280);
        stage.setHeight(860);
        window.show(stage);
    }

    private Node node(FxRobot robot, String id) {
        return new Typing(robot).node(id);
    }

    private void type(FxRobot robot, String id, String text) {
        new Typing(robot).type(id, text);
    }

    /** Types, presses Enter, and goes on typing where the keyboard then is. */
    private void typeDown(FxRobot robot, String id, String... texts) {
        new Typing(robot).typeOn(id, texts);
    }

    private void press(FxRobot robot, String id) {
        new Typing(robot).press(id);
    }

    /** The first prompt of the step after the one in front. */
    private void next(FxRobot robot) {
        int step = window.shell().front() + 1;
        robot.press(KeyCode.ALT).type(KeyCode.valueOf("DIGIT" + step)).release(KeyCode.ALT);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void done(Step step) {
        assertThat(window.model().assessment().states().get(step))
                .as(step + ": "
                        + window.model().assessment().findings().stream()
                                .filter(f -> f.step() == step)
                                .toList())
                .isIn(StepState.DONE, StepState.WARNED);
    }

    @Test
    void fromAnEmptyStartToASignedCard(FxRobot robot) throws Exception {
        type(robot, "/start/farm", "Thornmarsh Farm");
        type(robot, "/start/crop", "spring barley");
        type(robot, "/start/tramlineWidth", "28");
        press(robot, "/start/drivingPattern/BACK_AND_FORTH");
        type(robot, "/machine/name", "The farm’s broadcaster");
        type(robot, "/machine/discDiameter", "84");
        type(robot, "/machine/discSpeedAt540", "870");
        type(robot, "/machine/wantedHeight", "75");
        type(robot, "/machine/levers/0/label", "long vane");
        type(robot, "/machine/levers/0/lowest", "1");
        type(robot, "/machine/levers/0/highest", "12");
        type(robot, "/machine/levers/0/step", "0,5");
        robot.interact(
                () -> choiceBox(robot, "Throws wider").getSelectionModel().select(1));
        done(Step.START);

        next(robot);
        press(robot, "/product/treated/YES");
        type(robot, "/product/useBy", "2027-09-30");
        type(robot, "/product/name", "Granular urea");
        type(robot, "/product/delivery", "S-1042");
        type(robot, "/product/nitrogen", "46");
        press(robot, "/product/form/GRANULAR_UREA");
        press(robot, "/product/condition/FREE_FLOWING");
        press(robot, "/product/blend/NO");
        press(robot, "/product/nitrateBefore/NO");
        type(robot, "/product/containerVolume", "2");
        type(robot, "/product/containerEmpty", "212");
        typeDown(robot, "/product/containerFull/0", "1722", "1731", "1726");
        assertThat(window.model().setup().product().containerFull())
                .extracting(EnteredQuantity::text)
                .containsExactly("1722", "1731", "1726");
        press(robot, "/product/sieveAmounts/PERCENT");
        // an empty aperture leads to the amounts
        typeDown(robot, "/product/apertures/0", "2.00", "3.15", "4.50", "", "4", "46", "46", "4");
        done(Step.PRODUCT);

        next(robot);
        press(robot, "/match/startWithoutReference/YES");
        type(robot, "/match/settings/levers/long vane", "9");
        type(robot, "/match/settings/ptoSpeed", "540");
        done(Step.MATCH);

        next(robot);
        type(robot, "/yard/vanes/0/length", "331");
        type(robot, "/yard/vanes/0/lengthNew", "332");
        press(robot, "yard.restGood");
        type(robot, "/yard/heightLeft", "81");
        type(robot, "/yard/heightRight", "80.5");
        type(robot, "/yard/ptoMeasured", "538");
        done(Step.MACHINE);

        next(robot);
        typeDown(robot, "/height/cropHeights/0", "24", "27", "26");
        type(robot, "/height/left", "101");
        type(robot, "/height/right", "101");
        done(Step.HEIGHT);

        next(robot);
        press(robot, "/rate/plan/basis/NITROGEN");
        type(robot, "/rate/plan/nitrogenRate", "80");
        type(robot, "/rate/plan/speed", "12");
        type(robot, "/rate/bucketTests/0/openingLeft", "27.5");
        type(robot, "/rate/bucketTests/0/openingRight", "27.5");
        type(robot, "/rate/bucketTests/0/time", "20");
        type(robot, "/rate/bucketTests/0/left/0", "16.1");
        type(robot, "/rate/bucketTests/0/right/0", "16.2");
        done(Step.RATE);

        next(robot);
        type(robot, "/trays/trayCount", "7");
        press(robot, "trays.begin");
        type(robot, "/trays/tests/0/wind", "1.2");
        assertThat(window.model().setup().trays().tests().get(0).settings().levers())
                .containsEntry("long vane", new EnteredQuantity("9", Unit.NONE));
        typeDown(robot, "/trays/tests/0/catches/0", "12.9", "15.4", "18.9", "22.6", "19.6", "15.1", "13.4");
        assertThat(window.model().assessment().states().get(Step.TRAYS)).isEqualTo(StepState.WARNED);
        // the button of the instruction: the new test begins with what was advised
        press(robot, "trays.act");
        assertThat(window.model()
                        .setup()
                        .trays()
                        .tests()
                        .get(1)
                        .settings()
                        .levers()
                        .get("long vane")
                        .text())
                .isNotEqualTo("9");
        typeDown(robot, "/trays/tests/1/catches/0", "16.4", "17.8", "18.1", "18.6", "16.7", "17.1", "15.9");
        done(Step.TRAYS);

        next(robot);
        type(robot, "/card/measuredBy", "R. Fenwick");
        type(robot, "/card/signedBy", "A. Marlow");
        assertThat(window.model().setup().card().date()).isEqualTo("2027-03-18");
        assertThat(window.model().assessment().card().cardAllowed())
                .as(String.valueOf(window.model().assessment().card().missing()))
                .isTrue();
        press(robot, "card.make");
        Path cards = folder.resolve("cards");
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> Files.isDirectory(cards) && only(cards) != null);
        byte[] card = Files.readAllBytes(only(cards));
        VerifyResult result = PdfVerifier.verify(card, Set.of());
        assertThat(result.unchanged()).isTrue();
        assertThat(result.signedBy()).isEqualTo("A. Marlow");

        // everything typed is on disk
        robot.interact(() -> window.saver().save());
        assertThat(new SetupStore(new SetupJson()).read(window.saver().file()))
                .isEqualTo(window.model().setup());
    }

    private static Path only(Path cards) {
        try (var files = Files.list(cards)) {
            return files.filter(file -> file.toString().endsWith(".pdf"))
                    .findFirst()
                    .orElse(null);
        } catch (java.io.IOException unreadable) {
            return null;
        }
    }

    private ChoiceBox<?> choiceBox(FxRobot robot, String label) {
        return robot.lookup((Node node) -> node instanceof ChoiceBox<?> box && label.equals(box.getAccessibleText()))
                .query();
    }

    @Test
    void typingMistakesAreReportedWhereTheyAreTyped(FxRobot robot) {
        type(robot, "/start/tramlineWidth", "wide");
        assertThat(shown(robot, "is not a number")).isTrue();
        type(robot, "/start/tramlineWidth", "280");
        assertThat(shown(robot, "280 m is not possible. Enter 9 to 60 m")).isTrue();
        type(robot, "/start/tramlineWidth", "1,250");
        assertThat(shown(robot, "can be read two ways")).isTrue();
        type(robot, "/start/tramlineWidth", "28,0");
        assertThat(window.model().assessment().tramlineWidthM()).isEqualTo(28);
        assertThat(shown(robot, "can be read two ways")).isFalse();
        type(robot, "/start/tramlineWidth", "92 ft");
        assertThat(window.model().assessment().tramlineWidthM()).isBetween(28.0, 28.1);
        // all that was typed in one go is undone in one go, also over several tries
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.model().setup().start().tramlineWidth().text()).isEmpty();
    }

    private boolean shown(FxRobot robot, String part) {
        WaitForAsyncUtils.waitForFxEvents();
        return robot.lookup((Node node) -> node instanceof javafx.scene.control.Label label
                        && label.getText().replace('\u00a0', ' ').contains(part)
                        && label.localToScene(label.getBoundsInLocal()).getWidth() > 0)
                .tryQuery()
                .isPresent();
    }
}
