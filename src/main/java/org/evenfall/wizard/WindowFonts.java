package org.evenfall.wizard;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import javafx.scene.text.Font;

/** The fonts of the window, from the program itself. */
final class WindowFonts {

    private static final List<String> FILES = List.of(
            "AtkinsonHyperlegibleNext_400Regular.ttf",
            "AtkinsonHyperlegibleNext_600SemiBold.ttf",
            "AtkinsonHyperlegibleNext_700Bold.ttf",
            "DejaVuSans.ttf");

    /** Of no meaning: the style sheet says how large letters are. */
    private static final double ANY_SIZE = 15;

    static {
        for (String file : FILES) {
            try (InputStream font =
                    Objects.requireNonNull(WindowFonts.class.getResourceAsStream("/org/evenfall/fonts/" + file))) {
                Font.loadFont(font, ANY_SIZE);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
    }

    private WindowFonts() {}

    /** Makes them known to the toolkit, which must be started: once, as this class is loaded. */
    static void load() {
        // the class is loaded now
    }
}
