package org.evenfall.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Objects;

/**
 * A JSON file with one list to which the program adds. One process and one thread change it at a time; two earlier
 * generations are kept; keys that this version does not know stay.
 */
final class Register {

    static final int VERSION = 1;
    private static final String VERSION_KEY = "evenfall";

    private static final ObjectMapper JSON = new ObjectMapper();

    /** One change at a time in this process, since its threads cannot wait for each other's file locks. */
    private static final Object ONE_AT_A_TIME = new Object();

    private final Path file;
    private final String list;

    /** @param list key of the list */
    Register(Path file, String list) {
        this.file = file;
        this.list = list;
    }

    /** A change of the list. */
    @FunctionalInterface
    interface Change {
        /** @throws IOException when it cannot be made; the register is then left as it is */
        void of(ArrayNode items) throws IOException;
    }

    Path file() {
        return file;
    }

    /**
     * The items; none while there is no file.
     *
     * @throws InputFileException when the file cannot be read or is no such register
     */
    ArrayNode items() throws InputFileException {
        return (ArrayNode) read(file).get(list);
    }

    private ObjectNode read(Path from) throws InputFileException {
        try {
            return parsed(from);
        } catch (NoSuchFileException none) {
            return empty();
        } catch (IOException unreadable) {
            throw new InputFileException(from.toString(), "", "cannot be read");
        }
    }

    private ObjectNode empty() {
        ObjectNode empty = JSON.createObjectNode().put(VERSION_KEY, VERSION);
        empty.putArray(list);
        return empty;
    }

    /**
     * A register that is read.
     *
     * @throws InputFileException when it is damaged
     * @throws IOException when it is not there or cannot be read
     */
    private ObjectNode parsed(Path from) throws IOException, InputFileException {
        try {
            JsonNode tree =
                    JSON.readTree(InputText.decode(WholeFileReader.read(from, InputText.MOST_BYTES), from.toString()));
            if (tree instanceof ObjectNode register
                    && register.path(VERSION_KEY).asInt() == VERSION
                    && register.get(list) instanceof ArrayNode) {
                return register;
            }
            throw new InputFileException(from.toString(), "/" + list, "expected a list and version " + VERSION);
        } catch (JsonProcessingException syntax) {
            throw new InputFileException(from.toString(), "", "not valid JSON");
        }
    }

    /** Whether a file is one of this kind. */
    boolean isSound(Path one) throws IOException {
        try {
            parsed(one);
            return true;
        } catch (InputFileException damaged) {
            return false;
        }
    }

    /**
     * Changes the list and writes it. A damaged file is put aside, with its newest sound generation in its place.
     *
     * @throws IOException when it cannot be read or written; it is then as it was
     */
    void change(Change change) throws IOException {
        Files.createDirectories(Objects.requireNonNull(file.toAbsolutePath().getParent()));
        Path lockFile = file.resolveSibling("." + file.getFileName() + ".lock");
        synchronized (ONE_AT_A_TIME) {
            FileChannel channel = FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            try {
                channel.lock();
                write(change);
            } finally {
                close(channel);
            }
        }
    }

    /** Ends the lock. What was written counts, also where this fails. */
    private static void close(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException released) {
            // the system lets go of the lock with the process at the latest
        }
    }

    private ObjectNode recovered() throws IOException {
        try {
            return parsed(file);
        } catch (NoSuchFileException none) {
            return empty();
        } catch (InputFileException damaged) {
            Recovery.recover(file, this::isSound);
        }
        try {
            return read(file);
        } catch (InputFileException damaged) {
            throw new IOException(damaged);
        }
    }

    private void write(Change change) throws IOException {
        ObjectNode register = recovered();
        byte[] before = JSON.writeValueAsBytes(register);
        change.of((ArrayNode) register.get(list));
        if (!Arrays.equals(before, JSON.writeValueAsBytes(register))) {
            if (Files.exists(file)) {
                Generations.rotate(file, WholeFileReader.read(file));
            }
            WholeFileWriter.write(file, (register.toPrettyString() + "\n").getBytes(StandardCharsets.UTF_8));
        }
    }

    /** A file below a folder by its place there, with slashes; any other by its whole path. */
    static String relative(Path folder, Path file) {
        Path from = folder.toAbsolutePath().normalize();
        Path to = file.toAbsolutePath().normalize();
        return to.startsWith(from) ? from.relativize(to).toString().replace('\\', '/') : to.toString();
    }
}
