package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sign.KeyRing;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Work in the background: answers and failures of any kind come back on the JavaFX thread. */
@ExtendWith(ApplicationExtension.class)
class CardWorkTest {

    @TempDir
    private Path folder;

    private final BlockingQueue<Object> answers = new LinkedBlockingQueue<>();
    private Setup setup;
    private Assessment assessment;
    private WizardContext.Printer printer = pdf -> true;
    private CardWork work;

    @Start
    void start(Stage stage) {
        // the toolkit is all that is needed
    }

    @BeforeEach
    void demo() throws Exception {
        setup = new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
        assessment = Assessor.assess(setup);
        WizardContext other = Stage0.context(folder);
        work = new CardWork(
                new WizardContext(
                        other.assess(),
                        other.words(),
                        other.store(),
                        other.user(),
                        other.owner(),
                        other.clock(),
                        other.demo(),
                        other.reveal(),
                        other.choose(),
                        other.pick(),
                        pdf -> printer.send(pdf)),
                this::answer);
    }

    private void answer(Object answer) {
        answers.add(Platform.isFxApplicationThread() ? answer : "not on the JavaFX thread: " + answer);
    }

    /** Calls on the JavaFX thread and waits for one answer. */
    private Object after(Runnable call) throws Exception {
        WaitForAsyncUtils.asyncFx(call).get(20, TimeUnit.SECONDS);
        Object answer = answers.poll(30, TimeUnit.SECONDS);
        assertThat(answer).as("an answer within 30 s").isNotNull();
        return answer;
    }

    @Test
    void aFailureOfAnyKindIsReportedAndTheNextWorkIsDone() throws Exception {
        for (Throwable failure : List.of(
                new IOException("paper jam"), new IllegalStateException("a bug"), new StackOverflowError("deep"))) {
            printer = pdf -> {
                if (failure instanceof IOException problem) {
                    throw problem;
                }
                if (failure instanceof RuntimeException problem) {
                    throw problem;
                }
                throw (Error) failure;
            };
            assertThat(after(() -> work.print(setup, assessment, this::answer))).isSameAs(failure);
        }
        printer = pdf -> pdf.length < 1000;
        assertThat(after(() -> work.print(setup, assessment, this::answer))).isEqualTo(false);
    }

    @Test
    void aFailureWithTheKeysIsReported() throws Exception {
        IllegalArgumentException failure = new IllegalArgumentException("a bug");
        assertThat(after(() -> work.keys(
                        keys -> {
                            throw failure;
                        },
                        this::answer)))
                .isSameAs(failure);
        assertThat(after(() -> work.keys(keys -> {}, this::answer)))
                .isEqualTo(new KeyRing.Status(KeyRing.State.NONE, "", "", "", false, false));
    }

    @Test
    void aFailureOfThePreviewHasItsOwnAnswer() throws Exception {
        assertThat(after(
                        () -> work.draw(setup, null, this::answer, failure -> answer("preview " + failure.getClass()))))
                .isEqualTo("preview " + NullPointerException.class);
    }

    /** While the first is being drawn, a second and a third are asked for: the last is shown, the second is not drawn. */
    @Test
    void theLastPreviewIsShown() throws Exception {
        Object first = after(() -> {
            work.draw(setup, assessment, pages -> answer("first"), this::answer);
            work.draw(setup, assessment, pages -> answer("second"), this::answer);
            work.draw(setup, assessment, pages -> answer("third, pages " + pages.size()), this::answer);
        });
        assertThat(first).isEqualTo("third, pages 2");
        after(() -> work.keys(keys -> {}, this::answer));
        assertThat(answers).isEmpty();
    }

    @Test
    void aCardIsWrittenAndVerified() throws Exception {
        Path file = work.freeName(setup, false);
        assertThat(file.getParent()).isEqualTo(work.folder());
        Object code = after(() -> work.write(setup, assessment, file, this::answer));
        assertThat(work.known()).containsKey((String) code);
        assertThat(after(() ->
                        work.verify(file, result -> answer(result.orElseThrow().keyCode()))))
                .isEqualTo(code);
        assertThat(after(() -> work.verify(folder.resolve("none.pdf"), this::answer)))
                .isEqualTo(Optional.empty());
    }
}
