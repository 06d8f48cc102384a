package org.evenfall.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * Which setups were copied into the farm's folder from elsewhere: {@code taken-in.json}, the digest of the file's bytes to
 * the place it was at and the copy. The same bytes are copied once.
 */
final class TakenIn {

    private static final String FROM = "from";
    private static final String COPY = "copy";

    private final Path farm;
    private final Register register;

    TakenIn(UserFolder user) {
        this.farm = user.farm();
        this.register = new Register(farm.resolve("taken-in.json"), "files");
    }

    /** Whether a file was copied, in the state it has now or an earlier one. */
    boolean has(Path file) {
        String place = place(file);
        try {
            for (JsonNode one : register.items()) {
                if (one.path(FROM).asText().equals(place)) {
                    return true;
                }
            }
        } catch (InputFileException unreadable) {
            return false;
        }
        return false;
    }

    /**
     * The copy of a file.
     *
     * @param bytes its bytes
     * @param folder folder for a new copy
     * @param stem its name without ending
     * @throws IOException when it cannot be copied
     */
    Path copy(Path file, byte[] bytes, Path folder, String stem) throws IOException {
        String digest = digest(bytes);
        Path[] copy = new Path[1];
        register.change(items -> {
            for (JsonNode one : items) {
                Path earlier = farm.resolve(one.path(COPY).asText());
                if (one.path("sha256").asText().equals(digest) && Files.exists(earlier)) {
                    copy[0] = earlier;
                    return;
                }
            }
            copy[0] = place(bytes, folder, stem);
            WholeFileWriter.write(copy[0], bytes);
            ObjectNode one = items.addObject();
            one.put(FROM, place(file));
            one.put(COPY, Register.relative(farm, copy[0]));
            one.put("sha256", digest);
        });
        return copy[0];
    }

    /** A free place, or one with the same bytes: the copy of an earlier try, which failed before it was entered. */
    private static Path place(byte[] bytes, Path folder, String stem) throws IOException {
        for (int number = 1; ; number++) {
            Path place = folder.resolve(number == 1 ? stem + ".json" : stem + "-" + number + ".json");
            try {
                if (Arrays.equals(WholeFileReader.read(place), bytes)) {
                    return place;
                }
            } catch (NoSuchFileException free) {
                return place;
            }
        }
    }

    private static String place(Path file) {
        return file.toAbsolutePath().normalize().toString();
    }

    static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
