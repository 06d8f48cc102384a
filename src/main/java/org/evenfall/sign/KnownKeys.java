package org.evenfall.sign;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The keys known here, own and others', in a text file: one line a key with its code, a tab and its owner's name. */
final class KnownKeys {

    private final Path file;
    private final KeyFiles files;

    KnownKeys(Path file, KeyFiles files) {
        this.file = file;
        this.files = files;
    }

    /** Code to name, in the order in which they were added; empty when there is no file or it cannot be read. */
    Map<String, String> all() {
        Map<String, String> known = new LinkedHashMap<>();
        try {
            for (String line : Files.exists(file) ? Files.readAllLines(file) : List.<String>of()) {
                int tab = line.indexOf('\t');
                if (tab > 0) {
                    known.put(
                            line.substring(0, tab).strip(),
                            line.substring(tab + 1).strip());
                }
            }
        } catch (IOException unreadable) {
            return Map.of();
        }
        return known;
    }

    /** Adds a key, or gives a known one another name; blanks and tabs in the name become single blanks. */
    void add(String code, String name) throws IOException {
        Map<String, String> known = new LinkedHashMap<>(all());
        known.put(code, name.replaceAll("\\s+", " ").strip());
        write(known);
    }

    /** Removes a key; nothing is written when it is not known. */
    void remove(String code) throws IOException {
        Map<String, String> known = new LinkedHashMap<>(all());
        if (known.remove(code) != null) {
            write(known);
        }
    }

    private void write(Map<String, String> known) throws IOException {
        List<String> lines = new ArrayList<>();
        known.forEach((code, name) -> lines.add(code + "\t" + name + "\n"));
        files.write(file, String.join("", lines).getBytes(StandardCharsets.UTF_8));
    }
}
