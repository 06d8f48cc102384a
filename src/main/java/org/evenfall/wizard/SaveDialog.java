package org.evenfall.wizard;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.evenfall.finding.Sentences;

/** The system's own dialog for where to write a card. */
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
        Window owner = Window.getWindows().stream()
                .filter(Window::isFocused)
                .findFirst()
                .orElse(null);
        File chosen = chooser.showSaveDialog(owner);
        return Optional.ofNullable(chosen).map(File::toPath);
    }
}
