package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.stage.Stage;
import org.evenfall.setup.path.MachinePaths;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The usual range below a field, and a sentence about it, are in the unit that was typed. */
@ExtendWith(ApplicationExtension.class)
class UnitHintTest {

    private static final String DIAMETER = MachinePaths.DISC_DIAMETER.pointer();

    private static SharedWindow shared;

    private Typing typing;

    @Start
    void start(Stage stage) throws Exception {
        if (shared == null) {
            shared = SharedWindow.make();
        }
        shared.show(stage, 1366, 768);
    }

    @AfterAll
    static void forget() {
        shared = null;
    }

    @BeforeEach
    void keyboard(FxRobot robot) {
        typing = new Typing(robot);
    }

    @Test
    void theHintFollowsTheUnitTyped() {
        typing.type(DIAMETER, "84");
        assertThat(typing.words()).contains("usually 40 to 120 cm").doesNotContain("usually 400 to 1200 mm");
        typing.type(DIAMETER, "840 mm");
        assertThat(typing.words()).contains("usually 400 to 1200 mm").doesNotContain("usually 40 to 120 cm");
        typing.type(DIAMETER, "33in");
        assertThat(typing.words()).contains("usually 16 to 47 in");
    }

    @Test
    void sentencesQuoteWhatWasTyped() {
        typing.type(DIAMETER, "36,0 m");
        assertThat(typing.words())
                .contains("Disc diameter over the vane tips: 36,0 m is not possible. Enter 0.3 to 1.6 m.");
        typing.type(DIAMETER, "1250 mm");
        assertThat(typing.words())
                .contains("Disc diameter over the vane tips: 1250 mm is unusual (normally 400 to 1200 mm). Check it.");
        typing.type(DIAMETER, "1 yd");
        assertThat(typing.words())
                .contains("Disc diameter over the vane tips: “yd” is no unit known here. Known units: cm, mm, m, in.");
    }
}
