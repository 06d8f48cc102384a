package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.image.ImageView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.HeightEntries;
import org.evenfall.setup.entry.RateEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.sign.PdfVerifier;
import org.evenfall.wizard.picture.CardPreview;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Steps 4 to 7 by keyboard, each from blank, in the demo of an invented farm. */
@ExtendWith(ApplicationExtension.class)
class LaterStepsTest {

    private Path folder;
    private static SharedWindow shared;

    private WizardWindow window;
    private Typing typing;

    @Start
    void start(Stage stage) throws Exception {
        if (shared == null) {
            shared = SharedWindow.make();
        }
        window = shared.show(stage, 1280, 860);
        folder = shared.folder();
    }

    @AfterAll
    static void forget() {
        shared = null;
    }

    @BeforeEach
    void keyboard(FxRobot robot) {
        typing = new Typing(robot);
    }

    private void open(FxRobot robot, Step step, UnaryOperator<Setup> blank) {
        robot.interact(() -> {
            window.model().change(blank);
            window.shell().go(step.number());
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void heightTellsWhereToHoldTheTape(FxRobot robot) {
        open(robot, Step.HEIGHT, setup -> setup.withHeight(HeightEntries.EMPTY));
        typing.typeOn("/height/cropHeights/0", "24", "27", "26,0");
        typing.type("/height/left", "99");
        typing.type("/height/right", "97");
        // crop 25.7 cm, 75 cm over it by the settings, the machine hangs at 98 cm
        assertThat(typing.words())
                .contains("101 cm", "raise 3 cm", "left 2.0 cm higher", "75 cm")
                .doesNotContain("Front to rear");
        typing.type("/height/chainPoint", "-10");
        assertThat(typing.words()).contains("65 cm");
    }

    @Test
    void unitsAreAskedBackOnlyWhenTypedInUnits(FxRobot robot) {
        open(robot, Step.RATE, setup -> setup.withRate(RateEntries.EMPTY));
        assertThat(typing.there("/rate/plan/unitsBasis")).isFalse();
        typing.press("/rate/plan/basis/NITROGEN");
        typing.type("/rate/plan/nitrogenRate", "64");
        assertThat(typing.there("/rate/plan/unitsBasis")).isFalse();
        ChoiceBox<Unit> unit = robot.lookup((Node node) ->
                        node instanceof ChoiceBox<?> box && "Nitrogen rate: unit".equals(box.getAccessibleText()))
                .query();
        robot.interact(() -> unit.setValue(Unit.UNITS));
        assertThat(typing.words()).anyMatch(word -> word.startsWith("“Units” mean two things"));
        typing.press("/rate/plan/unitsBasis/HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE");
        assertThat(window.model().assessment().rate().plan().amounts().nitrogenKgPerHa())
                .isCloseTo(64 * 1.25535, offset(0.01));
        typing.press("/rate/plan/basis/PRODUCT");
        assertThat(typing.there("/rate/plan/nitrogenRate")).isFalse();
        typing.type("/rate/plan/productRate", "174");
        assertThat(typing.words()).contains("Spread 174 kg/ha of product: it carries 80 kg/ha of nitrogen.");
    }

    @Test
    void everyBucketTestIsKeptAndTheNextBeginsWithTheAdvisedOpening(FxRobot robot) {
        open(robot, Step.RATE, setup -> setup.withRate(setup.rate().withBucketTests(List.of())));
        typing.type("/rate/bucketTests/0/openingLeft", "25");
        typing.type("/rate/bucketTests/0/openingRight", "25");
        typing.type("/rate/bucketTests/0/time", "20");
        typing.type("/rate/bucketTests/0/bucketEmpty", "1.1");
        typing.typeOn("/rate/bucketTests/0/left/0", "15.4", "15.5");
        typing.typeOn("/rate/bucketTests/0/right/0", "15.5", "15.3");
        assertThat(typing.words()).anyMatch(word -> word.startsWith("Next test: left "));
        // Enter after the last catch, an empty one, and once more on the button of the next test
        robot.type(KeyCode.ENTER).type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.scene().getFocusOwner().getId()).isEqualTo("/rate/bucketTests/1/left/0");
        var second = window.model().setup().rate().bucketTests().get(1);
        assertThat(Double.parseDouble(second.openingLeft().text())).isBetween(26.0, 30.0);
        assertThat(second.bucketEmpty().text()).isEqualTo("1.1");
        typing.typeOn("/rate/bucketTests/1/left/0", "17.2", "17.3", "17.2");
        typing.typeOn("/rate/bucketTests/1/right/0", "17.3", "17.1");
        assertThat(window.model().setup().rate().bucketTests()).hasSize(2);
        assertThat(window.model().setup().rate().bucketTests().get(1).left()).hasSize(3);
        assertThat(typing.words())
                .contains("Test 1", "Test 2", "Another test")
                .anyMatch(word -> word.endsWith("Within the allowed band: keep this opening."));
        // Enter after the last catch now goes on
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.shell().front()).isEqualTo(Step.TRAYS.number());
    }

    @Test
    void catchesAreTypedWithOneHandAndAnsweredAtOnce(FxRobot robot) {
        open(robot, Step.TRAYS, setup -> setup.withTrays(TrayEntries.EMPTY));
        typing.type("/trays/trayCount", "7");
        typing.press("trays.begin");
        typing.type("/trays/tests/0/wind", "4,5");
        assertThat(typing.words()).anyMatch(word -> word.contains("too strong for a tray test"));
        typing.type("/trays/tests/0/wind", "1.2");
        typing.typeOn("/trays/tests/0/catches/0", "12.9", "15.4", "18.9", "22.6", "19.6", "15.1", "13.4");
        assertThat(typing.words())
                .contains("Field CV about 18 % (14 to 22 %): not even enough")
                .anyMatch(word -> word.startsWith("Turn “long vane” from 9 to ") && word.endsWith("wider."));
        // the button of the instruction: the next test with the move filled in
        typing.press("trays.act");
        assertThat(window.shell().prompt()).isEqualTo("6b");
        assertThat(window.model()
                        .setup()
                        .trays()
                        .tests()
                        .get(1)
                        .settings()
                        .levers()
                        .get("long vane"))
                .isNotEqualTo(window.model()
                        .setup()
                        .trays()
                        .tests()
                        .get(0)
                        .settings()
                        .levers()
                        .get("long vane"));
        assertThat(window.model().setup().trays().tests().get(1).openingLeft().text())
                .isEqualTo("27.5");
        typing.typeOn("/trays/tests/1/catches/0", "16.4", "17.8", "18.1", "18.6", "16.7", "17.1", "15.9");
        assertThat(typing.words()).contains("Field CV about 4 % (2 to 8 %): even", "Keep the settings");
    }

    /** One more run into the same trays: every catch waits for its further number, typed behind the plus. */
    @Test
    void oneMoreRunIsTypedBehindThePlus(FxRobot robot) {
        open(robot, Step.TRAYS, setup -> setup);
        typing.press("trays.oneMoreRun");
        assertThat(window.shell().prompt()).isEqualTo("6c");
        var test = window.model().setup().trays().tests().get(1);
        assertThat(test.runs().text()).isEqualTo("5");
        String before = test.catches().get(0).text();
        assertThat(before).endsWith("+");
        // what is there already is not replaced
        typing.typeOn("/trays/tests/1/catches/0", "5.1", "5.2", "5.3", "5.4", "5.1", "5.0", "4.9");
        assertThat(window.model().setup().trays().tests().get(1).catches())
                .extracting(EnteredQuantity::text)
                .startsWith(before + "5.1")
                .allMatch(text -> text.contains("+") && !text.endsWith("+"));
        assertThat(window.model().assessment().findings())
                .noneMatch(finding -> finding.key().equals("entry.sumOpen"));
    }

    @Test
    void catchesArePastedAcrossAndMovedTraysKeepTheirTruePlaces(FxRobot robot) {
        open(robot, Step.TRAYS, setup -> setup.withTrays(TrayEntries.EMPTY));
        typing.type("/trays/trayCount", "7");
        typing.press("trays.begin");
        robot.interact(() -> {
            ClipboardContent row = new ClipboardContent();
            row.putString("16.4\t17.8\t18.1\t18.6\t16.7\t17.1\t15.9\n");
            Clipboard.getSystemClipboard().setContent(row);
            typing.node("/trays/tests/0/catches/0").requestFocus();
        });
        robot.press(KeyCode.CONTROL).type(KeyCode.V).release(KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.model().setup().trays().tests().get(0).catches())
                .extracting(EnteredQuantity::text)
                .containsExactly("16.4", "17.8", "18.1", "18.6", "16.7", "17.1", "15.9");
        typing.press("trays.moved.0");
        typing.type("/trays/tests/0/positions/3", "1.1");
        assertThat(window.model()
                        .assessment()
                        .trays()
                        .tests()
                        .get(0)
                        .evenness()
                        .positionsM()
                        .get(3))
                .isEqualTo(1.1);
    }

    @Test
    void theMatchIsSimulatedMoreCloselyAndCanBeStopped(FxRobot robot) {
        open(robot, Step.MATCH, setup -> setup);
        assertThat(typing.words()).contains("Simulated 400 times.");
        typing.press("match.closer");
        waitForWords("match.closer");
        assertThat(typing.words()).contains("Simulated 200000 times.");
        // stopped in the same moment, it has looked at fewer
        robot.interact(() -> {
            ((Button) typing.node("match.closer")).fire();
            ((Button) typing.node("match.closerStop")).fire();
        });
        waitForWords("match.closer");
        assertThat(typing.words()).noneMatch(word -> word.startsWith("Simulated 200"));
        assertThat(typing.words()).anyMatch(word -> word.matches("[+−]\\d+\\.\\d\\sm"));
    }

    /** Until the button is there again. */
    private void waitForWords(String id) {
        try {
            WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> typing.there(id));
        } catch (java.util.concurrent.TimeoutException late) {
            throw new AssertionError(id + " does not come back", late);
        }
    }

    @Test
    void anotherWayOfReadingKeepsTheNumbersTyped(FxRobot robot) {
        open(robot, Step.TRAYS, setup -> setup.withTrays(TrayEntries.EMPTY));
        typing.type("/trays/trayCount", "7");
        typing.press("trays.begin");
        typing.typeOn("/trays/tests/0/catches/0", "16", "17", "18", "18", "16", "17", "15");
        assertThat(typing.there("/trays/tubeBore")).isFalse();
        typing.press("/trays/catchKind/HEIGHT");
        assertThat(window.model().setup().trays().catchKind()).isEqualTo(AmountKind.HEIGHT);
        typing.type("/trays/tubeBore", "20");
        assertThat(window.model().setup().trays().tests().get(0).catches())
                .contains(new EnteredQuantity("18", Unit.MM));
        assertThat(window.model().assessment().trays().tests()).hasSize(1);
    }

    /** A triangle 48 m wide: by arithmetic it lies flat at 24 m, its half-rate width. */
    @Test
    void aSinglePassIsOverlappedWhileItIsTyped(FxRobot robot) throws Exception {
        open(
                robot,
                Step.TRAYS,
                setup -> setup.withStart(setup.start().withTramlineWidth(new EnteredQuantity("24", Unit.M))));
        // a row each: position, Enter, amount, Enter
        typing.typeOn("/trays/line/0/position", ("-24 0 -18 5 -12 10 -6 15 0 20 6 15 12 10 18 5 24 0").split(" "));
        var line = window.model().assessment().trays().line();
        assertThat(line.overlap().cvPercent()).isCloseTo(0, offset(1e-9));
        assertThat(line.overlap().halfRateWidth()).isCloseTo(24, offset(1e-9));
        assertThat(typing.words()).contains("Laid at 24 m", "24 m", "CV 0 %");
        typing.type("/trays/line/8/position", "18");
        assertThat(typing.words()).anyMatch(word -> word.contains("Two trays of the line are at"));
        typing.type("/trays/line/8/position", "24");
        // read as millilitres instead, the numbers stay and their unit fits
        typing.press("/trays/catchKind/VOLUME");
        assertThat(window.model().setup().trays().line().get(4).amount().text()).isEqualTo("20");
        assertThat(window.model().assessment().trays().line().overlap().halfRateWidth())
                .isCloseTo(24, offset(1e-9));
        typing.type("/trays/line/4/amount", "20.0");
        assertThat(window.model().assessment().findings())
                .noneMatch(finding -> finding.field().startsWith("/trays/line/"));
        robot.interact(() -> typing.node("/trays/line/8/amount").requestFocus());
        robot.interact(() -> snapshot("line.png"));
    }

    private void snapshot(String name) {
        try {
            Files.createDirectories(Path.of("target", "tour"));
            javax.imageio.ImageIO.write(
                    javafx.embed.swing.SwingFXUtils.fromFXImage(window.shell().snapshot(null, null), null),
                    "png",
                    Path.of("target", "tour", name).toFile());
        } catch (java.io.IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        }
    }

    @Test
    void theCardSaysWhatIsMissingAndLeadsThere(FxRobot robot) {
        open(
                robot,
                Step.CARD,
                setup -> setup.withCard(setup.card().withSignedBy(""))
                        .withRate(setup.rate().withBucketTests(List.of())));
        assertThat(typing.words()).contains("Cab card: Enter who signs.", "Rate: Do a bucket test.");
        assertThat(typing.node("card.make").isDisabled()).isTrue();
        robot.interact(() -> robot.lookup((Node node) ->
                        node instanceof Button button && "Rate: Do a bucket test.".equals(button.getText()))
                .queryButton()
                .fire());
        typing.readCautions();
        assertThat(window.shell().front()).isEqualTo(Step.RATE.number());
        // the way on leads back to the card
        typing.press("shell.next");
        assertThat(window.shell().prompt()).isEqualTo("7c");
    }

    @Test
    void thePreviewIsTheWholeCardAndTheCardIsSigned(FxRobot robot) throws Exception {
        open(robot, Step.CARD, setup -> setup.withCard(setup.card().withSignedBy("")));
        typing.type("/card/signedBy", "A. Marlow");
        CardPreview preview =
                robot.lookup((Node node) -> node instanceof CardPreview).query();
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> preview.lookupAll(".sheet").size() == 2);
        // the pages are laid out in the pulse after they are shown
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> ((ImageView) preview.lookup(".sheet")).getFitWidth() > 300);
        assertThat(typing.words()).anyMatch(word -> word.startsWith("Your key is made when you first sign"));
        typing.press("card.make");
        Path card = folder.resolve("cards").resolve("thornmarsh-farm-s-1042-2027-03-18.pdf");
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> Files.exists(card));
        assertThat(PdfVerifier.verify(Files.readAllBytes(card), Set.of()).unchanged())
                .isTrue();
        // a second card never overwrites the first
        assertThat(typing.words()).anyMatch(word -> word.startsWith("Signed "));
        typing.press("card.saveElsewhere");
        Path second = folder.resolve("cards").resolve("thornmarsh-farm-s-1042-2027-03-18-2.pdf");
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> Files.exists(second));
        // the file is there a moment before the screen says so
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> typing.words().stream().anyMatch(word -> word.startsWith("Your key has the code")));
    }

    @Test
    void outOfReachGivesAFindingAndNoCard(FxRobot robot) {
        open(
                robot,
                Step.CARD,
                setup -> setup.withStart(setup.start().withTramlineWidth(new EnteredQuantity("54", Unit.M)))
                        .withMatch(setup.match().withTrayTestOnly(YesNo.NO)));
        assertThat(window.model().assessment().card().findingOnly()).isTrue();
        assertThat(typing.words()).anyMatch(word -> word.startsWith("No card, but a one-page finding"));
        assertThat(typing.node("card.make").isDisabled()).isFalse();
    }
}
