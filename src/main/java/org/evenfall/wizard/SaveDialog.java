package org.evenfall.wizard;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.evenfall.finding.Sentences;
import org.jspecify.annotations.Nullable;

/** The system's own dialogs for where to write a card and which file to read. */
final class SaveDialog {

    private SaveDialog() {}

    /** The file chosen; empty when the person cancelled. On the window's thread. */
    static Optional<Path> choose(Sentences words, Path suggested) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(words.text("card.choose"));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("PDF", "*.pdf"));
        chooser.setInitialFileName(String.valueOf(suggested.getFileName()));
        Path folder = suggested.toAbsolutePath().getParent();
        try {
            if (folder != null) {
                Files.createDirectories(folder);
                chooser.setInitialDirectory(folder.toFile());
            }
        } catch (IOException unwritable) {
            // the dialog then opens wherever the system likes
        }
        return Optional.ofNullable(chooser.showSaveDialog(owner())).map(File::toPath);
    }

    /** A file to read; empty when the person cancelled. On the window's thread. */
    static Optional<Path> open(String title, String... extensions) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(
                        String.join(", ", extensions),
                        Arrays.stream(extensions).map(ending -> "*." + ending).toList()));
        return Optional.ofNullable(chooser.showOpenDialog(owner())).map(File::toPath);
    }

    private static @Nullable Window owner() {
        return Window.getWindows().stream()
                .filter(Window::isFocused)
                .findFirst()
                .orElse(null);
    }
}
