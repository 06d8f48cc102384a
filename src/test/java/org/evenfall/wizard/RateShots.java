package org.evenfall.wizard;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.BucketMethod;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class RateShots {
    private WizardWindow window;
    private Stage stage;

    @Start
    void start(Stage shown) throws Exception {
        stage = shown;
        window = SharedWindow.make().show(stage, 1366, 768);
    }

    private static Setup filled(String f) throws Exception {
        if (f.equals("first") || f.equals("timed")) {
            Setup demo = Filling.DEMO.setup();
            var t = demo.rate().bucketTests().get(0);
            if (f.equals("timed")) {
                t = t.withMethod(BucketMethod.KNOWN_WEIGHT)
                        .withKnownWeight(org.evenfall.quantity.EnteredQuantity.parse("50 kg"))
                        .withLeftTimes(List.of(org.evenfall.quantity.EnteredQuantity.parse("62 s")))
                        .withRightTimes(List.of(org.evenfall.quantity.EnteredQuantity.parse("64 s")));
            }
            return demo.withRate(demo.rate().withBucketTests(List.of(t)));
        }
        return Filling.valueOf(f).setup();
    }

    @Test
    void pictures() throws Exception {
        Path to = Path.of("target", "shots");
        Files.createDirectories(to);
        List<WindowSize> sizes = List.of(new WindowSize(1366, 768, false, 100), new WindowSize(1024, 700, false, 100), new WindowSize(1280, 720, true, 100));
        for (WindowSize size : sizes) {
            WaitForAsyncUtils.asyncFx(() -> { size.set(window, stage); window.dark(size.widthPx() == 1024); }).get();
            for (String f : System.getProperty("fillings", "EMPTY,DEMO,first,timed,WORST").split(",")) {
                Setup setup = filled(f);
                WaitForAsyncUtils.asyncFx(() -> window.model().open(SharedWindow.cautionsRead(window, setup))).get();
                for (String p : List.of("5a", "5b", "5c", "5d", "5e")) {
                    if (!p.equals("5e") && (f.equals("first") || f.equals("timed"))) continue;
                    Pulses.look(window.scene(), () -> window.shell().show(p), () -> {});
                    Pulses.look(window.scene(), () -> {}, () -> {});
                    WritableImage image = WaitForAsyncUtils.asyncFx(() -> window.scene().snapshot(null)).get();
                    ImageIO.write(SwingFXUtils.fromFXImage(image, null), "png", to.resolve(p + "-" + size.widthPx() + "-" + f + ".png").toFile());
                }
            }
        }
    }
}
