package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.evenfall.finding.Step;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What a limit or a figure of a model rests on is to be read on the screen. */
@ExtendWith(ApplicationExtension.class)
class SourcesOnScreenTest {

    /** Least contrast of small text. Source: WCAG 2.2, success criterion 1.4.3. */
    private static final double LEAST_CONTRAST = 4.5;

    private WizardWindow window;
    private Typing typing;

    @Start
    void start(Stage stage) throws Exception {
        window = SharedWindow.make().show(stage, 1280, 860);
    }

    @BeforeEach
    void keyboard(FxRobot robot) {
        typing = new Typing(robot);
    }

    private void go(FxRobot robot, Step step) {
        robot.interact(() -> window.shell().go(step.number()));
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void theSourceOfAFindingAtItsEntryIsInTheHelp(FxRobot robot) {
        go(robot, Step.MACHINE);
        assertThat(typing.words()).noneMatch(word -> word.startsWith("Source: "));
        typing.type("/yard/heightLeft", "95");
        assertThat(help(robot)).contains("Source: common practice, no published source: 2 cm between left and right");
    }

    /** The help of the prompt in front; closed again. */
    private List<String> help(FxRobot robot) {
        robot.type(KeyCode.F1);
        WaitForAsyncUtils.waitForFxEvents();
        List<String> lines = robot.lookup(".help .label").<Label>queryAll().stream()
                .map(line -> line.getText().replace('\u00a0', ' '))
                .toList();
        robot.type(KeyCode.F1);
        WaitForAsyncUtils.waitForFxEvents();
        return lines;
    }

    @Test
    void theSourcesAtThePictureAreBehindOneClick(FxRobot robot) {
        go(robot, Step.PRODUCT);
        robot.interact(() -> window.shell().show("1h"));
        String source = "Source: flight model; the throw needed and the error of the model are assumptions, ours";
        assertThat(typing.words()).contains("Show sources").doesNotContain(source);
        double before =
                typing.node("findings.sources").getParent().getBoundsInParent().getHeight();
        typing.press("findings.sources");
        assertThat(typing.words()).contains("Hide sources", source);
        assertThat(typing.node("findings.sources")
                        .getParent()
                        .getBoundsInParent()
                        .getHeight())
                .as("two findings get room for their sources, more of them scroll")
                .isBetween(before - 5, before + 80);
        typing.press("findings.sources");
        assertThat(typing.words()).contains("Show sources").doesNotContain(source);
    }

    @Test
    void figuresOfAModelNameIt(FxRobot robot) {
        String flight = "Source: drag: Clift, Grace and Weber 1978; take-off 0 to 10°: Villette et al. 2008; "
                + "friction, shape of urea: assumptions, ours";
        robot.interact(() -> window.shell().show("2c"));
        assertThat(typing.words()).contains(flight);
        robot.interact(() -> window.shell().show("4b"));
        assertThat(help(robot)).contains(flight);
        robot.interact(() -> window.shell().show("6d"));
        assertThat(help(robot))
                .contains("Source: 15 %: Defra RB209 and others; 10 and 20 %: ours, after the farm press")
                .anyMatch(word -> word.startsWith("Source: statistical model, ours"));
    }

    @Test
    void noStepShowsTheKeyOfASource(FxRobot robot) {
        for (Step step : Step.values()) {
            go(robot, step);
            if (typing.there("findings.sources")) {
                typing.press("findings.sources");
            }
            assertThat(typing.words()).noneMatch(word -> word.contains("source."));
            if (typing.there("findings.sources")) {
                typing.press("findings.sources");
            }
        }
    }

    @Test
    void theLineIsQuietAndLegible(FxRobot robot) throws Exception {
        for (boolean dark : new boolean[] {false, true}) {
            WaitForAsyncUtils.asyncFx(() -> window.dark(dark)).get();
            robot.interact(() -> window.shell().show("2c"));
            WaitForAsyncUtils.waitForFxEvents();
            Label line = robot.lookup(".source").queryAs(Label.class);
            Color text = (Color) line.getTextFill();
            Color paper = dark ? Color.web("#14191C") : Color.web("#FAF8F3");
            assertThat(contrast(text, paper)).isGreaterThan(LEAST_CONTRAST);
            assertThat(line.getFont().getSize()).isLessThan(15);
        }
        WaitForAsyncUtils.asyncFx(() -> window.dark(false)).get();
    }

    /** Source: WCAG 2.2, contrast ratio of relative luminances. */
    private static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double share) {
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
