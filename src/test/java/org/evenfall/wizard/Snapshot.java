package org.evenfall.wizard;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Node;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import org.testfx.api.FxRobot;

/** A picture of what is on the screen, to be looked at in target/tour. */
final class Snapshot {

    private static final Path OUT = Path.of("target", "tour");

    private Snapshot() {}

    static void of(FxRobot robot, Node node, String name) throws Exception {
        WritableImage[] image = new WritableImage[1];
        robot.interact(() -> image[0] = node.snapshot(null, null));
        Files.createDirectories(OUT);
        ImageIO.write(
                SwingFXUtils.fromFXImage(image[0], null),
                "png",
                OUT.resolve(name + ".png").toFile());
    }
}
