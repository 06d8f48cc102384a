package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
    void aLinkIsFollowed() throws Exception {
        Path file = Files.write(temp.resolve("file"), OLD);
        Path link = Files.createSymbolicLink(temp.resolve("link"), file);
        WholeFileWriter.write(link, NEW);
        assertThat(link).isSymbolicLink();
        assertThat(file).isRegularFile().hasBinaryContent(NEW);
        WholeFileWriter.writePrivate(link, OLD);
        assertThat(link).isSymbolicLink();
        assertThat(file).hasBinaryContent(OLD);
    }

    @Test
    void aLinkToNowhereIsNotReplaced() throws Exception {
        Path link = Files.createSymbolicLink(temp.resolve("link"), temp.resolve("nowhere"));
        assertThatThrownBy(() -> WholeFileWriter.write(link, NEW)).isInstanceOf(IOException.class);
        assertThat(link).isSymbolicLink();
        assertThat(names(temp)).containsExactly("link");
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-rw-r--", "rw-r--r--", "rw-------"})
    void theFileKeepsItsPermissions(String usual) throws Exception {
        Path file = Files.write(temp.resolve("file"), OLD);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(usual));
        WholeFileWriter.write(file, NEW);
        assertThat(file).hasBinaryContent(NEW);
        assertThat(permissions(file)).isEqualTo(usual);
    }

    @Test
    void aNewFileIsItsOwnersOnly() throws Exception {
        WholeFileWriter.write(temp.resolve("file"), NEW);
        assertThat(permissions(temp.resolve("file"))).isEqualTo("rw-------");
    }

    /** A pipe would be replaced by a file, and whoever reads from it wait for ever. */
    @Test
    void aPipeIsNotWrittenTo() throws Exception {
        Path pipe = temp.resolve("pipe");
        Assumptions.assumeTrue(
                new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0);
        assertThatThrownBy(() -> WholeFileWriter.write(pipe, NEW)).hasMessageContaining("no regular file");
        assertThatThrownBy(() -> WholeFileWriter.writePrivate(pipe, NEW)).hasMessageContaining("no regular file");
        assertThat(Files.readAttributes(pipe, BasicFileAttributes.class).isOther())
                .isTrue();
        assertThat(names(temp)).containsExactly("pipe");
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
