package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.stage.Stage;
import org.evenfall.finding.Step;
import org.evenfall.publish.CardService;
import org.evenfall.sign.KeyRing;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The signing key by keyboard: made, closed, opened, replaced; a card checked and its key remembered. */
@ExtendWith(ApplicationExtension.class)
class KeyFormTest {

    private static final Instant WHEN = Instant.parse("2027-03-18T08:00:00Z");

    private WizardWindow window;
    private Typing typing;
    private Path folder;

    @Start
    void start(Stage stage) throws Exception {
        folder = Files.createTempDirectory("evenfall-key");
        Path copy = folder.resolve("demo.json");
        Files.copy(Path.of("demo", "setup.json"), copy);
        KeyRing ring = CardService.keys(new UserFolder(folder));
        ring.signing("A. Marlow", "farm manager", WHEN);
        ring.protect("old gate".toCharArray());
        Files.setPosixFilePermissions(folder.resolve("signing-key.p12"), PosixFilePermissions.fromString("rw-r--r--"));
        window = SharedWindow.whole(new WizardWindow(Stage0.context(folder), Optional.of(copy)));
        stage.setWidth(1280);
        stage.setHeight(1000);
        window.show(stage);
    }

    @BeforeEach
    void front(FxRobot robot) {
        typing = new Typing(robot);
        robot.interact(() -> window.shell().go(Step.CARD.number()));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void shows(String id, String part) throws Exception {
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> typing.there(id) && ((Label) typing.node(id)).getText().contains(part));
    }

    @Test
    void aClosedKeyIsOpenedClosedAnewAndReplaced(FxRobot robot) throws Exception {
        shows("key.state", "closed by a passphrase");
        shows("key.state", "Others on this computer could read your key file; now only you can.");
        typing.type("key.passphrase", "wrong");
        typing.press("key.openIt");
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> typing.words().contains("That is not the passphrase. Type it again."));
        typing.type("key.passphrase", "old gate");
        typing.press("key.openIt");
        shows("key.state", "Your key has the code");
        String first = ((Label) typing.node("key.state")).getText();

        typing.press("card.keyOptions");
        typing.press("key.protectAsk");
        typing.type("key.newPassphrase", "new gate");
        typing.type("key.again", "new gat");
        typing.press("key.protect");
        shows("key.trouble", "do not agree");
        typing.type("key.newPassphrase", "new gate");
        typing.type("key.again", "new gate");
        picture(robot, "key");
        typing.press("key.protect");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> {
            KeyRing later = CardService.keys(new UserFolder(folder));
            try {
                later.unlock("new gate".toCharArray());
                return true;
            } catch (org.evenfall.sign.KeyException notYet) {
                return false;
            }
        });

        typing.press("key.renewAsk");
        typing.press("key.renew");
        WaitForAsyncUtils.waitFor(
                30,
                TimeUnit.SECONDS,
                () -> !((Label) typing.node("key.state")).getText().equals(first)
                        && !((Label) typing.node("key.state")).getText().contains("passphrase"));
        assertThat(CardService.keys(new UserFolder(folder)).known()).hasSize(2);
        // no passphrase is left in a field
        assertThat(typing.there("key.newPassphrase")).isFalse();
    }

    @Test
    void aCardOfAnotherIsCheckedAndItsKeyRemembered(FxRobot robot) throws Exception {
        Path picked = Files.createDirectories(folder.resolve("picked"));
        KeyRing other = CardService.keys(new UserFolder(Files.createTempDirectory("evenfall-other")));
        Files.write(picked.resolve("file.pdf"), OtherCard.by(other, WHEN));
        typing.press("check.title");
        typing.press("check.choose");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> typing.there("check.remember"));
        assertThat(typing.words()).contains("Unchanged since it was signed.");
        typing.press("check.remember");
        String code = other.status().code();
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> typing.there("check.forget/" + code));
        picture(robot, "check");
        typing.press("check.forget/" + code);
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !typing.there("check.forget/" + code));
        assertThat(((TextInputControl) typing.node("key.passphrase")).getText()).isEmpty();
    }

    private void picture(FxRobot robot, String name) throws Exception {
        Snapshot.of(robot, window.shell(), "7-card-" + name);
    }
}
