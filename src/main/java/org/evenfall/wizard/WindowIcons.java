package org.evenfall.wizard;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import javafx.scene.image.Image;
import javafx.stage.Stage;

/** The program's icon on its window, in the sizes that systems ask for. */
final class WindowIcons {

    private static final List<Integer> SIZES_PX = List.of(16, 32, 48, 128, 256);

    private WindowIcons() {}

    static void put(Stage stage) {
        stage.getIcons().setAll(SIZES_PX.stream().map(WindowIcons::read).toList());
    }

    private static Image read(int sizePx) {
        try (InputStream in = Objects.requireNonNull(
                WindowIcons.class.getResourceAsStream("/org/evenfall/icons/evenfall-" + sizePx + ".png"))) {
            return new Image(in);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
