package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileWriterTest {

    private static final byte[] OLD = "old".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] NEW = "something new".getBytes(StandardCharsets.US_ASCII);

    @TempDir
    private Path temp;

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static String permissions(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    @Test
    void aFileIsWrittenWithItsFolderAndReplaced() throws Exception {
        Path file = temp.resolve("a").resolve("b").resolve("file.txt");
        WholeFileWriter.write(file, OLD);
        assertThat(file).hasBinaryContent(OLD);
        WholeFileWriter.write(file, NEW);
        assertThat(file).hasBinaryContent(NEW);
        WholeFileWriter.write(file, new byte[0]);
        assertThat(file).isEmptyFile();
        assertThat(names(file.getParent())).containsExactly("file.txt");
    }

    @Test
    void aPrivateFileIsItsOwnersOnly() throws Exception {
        Path file = temp.resolve("secret").resolve("key");
        WholeFileWriter.writePrivate(file, OLD);
        assertThat(file).hasBinaryContent(OLD);
        assertThat(permissions(file)).isEqualTo("rw-------");
        assertThat(permissions(file.getParent())).isEqualTo("rwx------");
        assertThat(names(file.getParent())).containsExactly("key");
    }

    /** A file that others could read is private after it was replaced; the folder, which others may use, is not touched. */
    @Test
    void aPrivateFileReplacesAReadableOne() throws Exception {
        Path folder = Files.createDirectory(
                temp.resolve("shared"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwxr-xr-x")));
        Path file = Files.write(folder.resolve("key"), OLD);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
        WholeFileWriter.writePrivate(file, NEW);
        assertThat(file).hasBinaryContent(NEW);
        assertThat(permissions(file)).isEqualTo("rw-------");
        assertThat(permissions(folder)).isEqualTo("rwxr-xr-x");
    }

    /** A folder with content in the place of the file cannot be replaced: it stays, and no temporary file is left. */
    @Test
    void aFailureLeavesEverythingAsItWas() throws Exception {
        Path blocked = Files.createDirectory(temp.resolve("blocked"));
        Path inside = Files.write(blocked.resolve("inside"), OLD);
        assertThatThrownBy(() -> WholeFileWriter.write(blocked, NEW)).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> WholeFileWriter.writePrivate(blocked, NEW)).isInstanceOf(IOException.class);
        assertThat(inside).hasBinaryContent(OLD);
        assertThat(names(temp)).containsExactly("blocked");
        assertThatThrownBy(() -> WholeFileWriter.write(inside.resolve("below a file"), NEW))
                .isInstanceOf(IOException.class);
        assertThat(inside).hasBinaryContent(OLD);
    }

    @Test
    void freeNamesAreCounted() throws Exception {
        assertThat(FreeNames.in(temp, "card", ".pdf")).isEqualTo(temp.resolve("card.pdf"));
        Files.write(temp.resolve("card.pdf"), OLD);
        assertThat(FreeNames.in(temp, "card", ".pdf")).isEqualTo(temp.resolve("card-2.pdf"));
        Files.write(temp.resolve("card-2.pdf"), OLD);
        Files.write(temp.resolve("card-4.pdf"), OLD);
        assertThat(FreeNames.in(temp, "card", ".pdf")).isEqualTo(temp.resolve("card-3.pdf"));
        assertThat(FreeNames.in(temp.resolve("none"), "card", ".pdf")).isEqualTo(temp.resolve("none/card.pdf"));
    }
}
