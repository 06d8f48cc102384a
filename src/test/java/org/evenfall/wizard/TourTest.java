package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Writes pictures of the prompts to target/tour, to be looked at: mvn -B -Ptour test. */
@Tag("tour")
@ExtendWith(ApplicationExtension.class)
class TourTest {

    private static final Path TOUR = Path.of("target", "tour");

    /** Those of the README, which has them under other names in demo/pictures. */
    private static final List<String> README = List.of("1g", "2c", "6d");

    private static final String ALL = ".*";

    /** While one prompt is worked on: names of the pictures wanted, such as 6[a-d].*demo. */
    private static final String ONLY = System.getProperty("tour.only", ALL);

    private static final WindowSize README_SIZE = new WindowSize(1280, 860, false, 100);

    private WizardWindow window;
    private Stage stage;

    @Start
    void start(Stage shown) throws Exception {
        stage = shown;
        window = SharedWindow.make().show(stage, 1366, 768);
    }

    @Test
    void pictures() throws Exception {
        Files.createDirectories(TOUR);
        List<String> prompts =
                window.shell().pages().stream().map(page -> page.prompt().id()).toList();
        List<TourPlan.Shot> shots =
                new ArrayList<>(ONLY.equals(ALL) ? TourPlan.shots(prompts) : TourPlan.every(prompts));
        shots.removeIf(shot -> !shot.name().matches(ONLY));
        README.forEach(prompt -> shots.add(new TourPlan.Shot(prompt, README_SIZE, false, Filling.DEMO)));
        // pictures are written while the next one is laid out
        ExecutorService writer = Executors.newSingleThreadExecutor();
        List<Future<?>> written = new ArrayList<>();
        List<TourPlan.Shot> taken = new ArrayList<>();
        TourPlan.Shot before = null;
        for (TourPlan.Shot shot : shots) {
            prepare(shot, before);
            before = shot;
            if (asked(shot.prompt())) {
                WritableImage image = picture(shot);
                taken.add(shot);
                written.add(writer.submit(() -> ImageIO.write(
                        SwingFXUtils.fromFXImage(image, null),
                        "png",
                        TOUR.resolve(shot.name() + ".png").toFile())));
            }
        }
        for (Future<?> picture : written) {
            picture.get();
        }
        writer.shutdown();
        Files.writeString(TOUR.resolve("index.html"), TourIndex.html(taken));
        assertThat(taken).hasSizeGreaterThan(ONLY.equals(ALL) ? 150 : 0);
    }

    /** Only what differs from the picture before: a change of theme styles everything anew. */
    private void prepare(TourPlan.Shot shot, TourPlan.Shot before) throws Exception {
        boolean onScreen = shot.size().widthPx() < WindowSize.LARGEST_HALL.widthPx();
        if (onScreen && (before == null || !before.size().equals(shot.size()))) {
            WaitForAsyncUtils.asyncFx(() -> shot.size().set(window, stage)).get();
        }
        if (before == null || before.dark() != shot.dark()) {
            WaitForAsyncUtils.asyncFx(() -> window.dark(shot.dark())).get();
        }
        if (before == null || before.filling() != shot.filling()) {
            var setup = shot.filling().setup();
            WaitForAsyncUtils.asyncFx(() -> window.model().open(SharedWindow.cautionsRead(window, setup)))
                    .get();
        }
    }

    private boolean asked(String prompt) {
        return window.shell().pages().stream()
                .anyMatch(page ->
                        page.prompt().id().equals(prompt) && page.prompt().asked());
    }

    private WritableImage picture(TourPlan.Shot shot) throws Exception {
        if (shot.size().widthPx() == WindowSize.LARGEST_HALL.widthPx()) {
            return unshown(shot);
        }
        Pulses.look(window.scene(), () -> window.shell().show(shot.prompt()), () -> {});
        if (shot.prompt().equals("7c") && shot.filling() == Filling.DEMO) {
            // the page is drawn on a thread of its own
            WaitForAsyncUtils.waitFor(
                    20,
                    TimeUnit.SECONDS,
                    () -> !window.shell().lookupAll(".sheet").isEmpty());
        }
        WritableImage[] image = new WritableImage[1];
        Pulses.look(window.scene(), () -> {}, () -> {});
        WaitForAsyncUtils.asyncFx(() -> image[0] = window.scene().snapshot(null))
                .get();
        return image[0];
    }

    /** A picture larger than the screen. */
    private static WritableImage unshown(TourPlan.Shot shot) throws Exception {
        Setup setup = shot.filling().setup();
        return WaitForAsyncUtils.asyncFx(() -> {
                    WizardWindow large = SharedWindow.unshown(shot.size());
                    large.dark(shot.dark());
                    large.model().open(SharedWindow.cautionsRead(large, setup));
                    SharedWindow.arrange(large, shot.prompt());
                    return large.scene().snapshot(null);
                })
                .get();
    }
}
