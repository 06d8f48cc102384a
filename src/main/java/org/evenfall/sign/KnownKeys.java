package org.evenfall.sign;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The keys known here, own and others', in a text file: one line a key with its code, a tab and its owner's name. Lines
 * are kept as bytes, so that one that is damaged, or no key at all, is still there after the next write.
 */
final class KnownKeys {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final Path file;
    private final KeyFiles files;

    KnownKeys(Path file, KeyFiles files) {
        this.file = file;
        this.files = files;
    }

    /** A line as it is in the file, each character one byte (ISO 8859-1), and what it says. */
    private record Line(String bytes, String text) {

        static Line of(String text) {
            return new Line(new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1), text);
        }

        /** What a line says; one that is no UTF-8 is taken as ISO 8859-1. */
        static Line read(String bytes) {
            String text;
            try {
                text = StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(bytes.getBytes(StandardCharsets.ISO_8859_1)))
                        .toString();
            } catch (CharacterCodingException otherCode) {
                text = bytes;
            }
            return new Line(bytes, text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
        }

        private int tab() {
            return text.indexOf('\t');
        }

        String code() {
            return tab() > 0 ? text.substring(0, tab()).strip() : "";
        }

        String name() {
            return text.substring(tab() + 1).strip();
        }
    }

    /**
     * Code to name, in the order in which they were added; empty when there is no file.
     *
     * @throws IOException when there is a file that cannot be read
     */
    Map<String, String> all() throws IOException {
        Map<String, String> known = new LinkedHashMap<>();
        for (Line line : lines()) {
            if (!line.code().isEmpty()) {
                known.put(line.code(), line.name());
            }
        }
        return known;
    }

    /** Adds a key, or gives a known one another name; blanks and tabs in the name become single blanks. */
    void add(String code, String name) throws IOException {
        Line added = Line.of(code + "\t" + name.replaceAll("\\s+", " ").strip());
        List<Line> lines = lines();
        int at = 0;
        while (at < lines.size() && !lines.get(at).code().equals(code)) {
            at++;
        }
        // of a code that is there twice, the last line counts when the file is read
        lines.removeIf(line -> line.code().equals(code));
        lines.add(Math.min(at, lines.size()), added);
        write(lines);
    }

    /** Removes a key; nothing is written when it is not known. */
    void remove(String code) throws IOException {
        List<Line> lines = lines();
        if (lines.removeIf(line -> line.code().equals(code))) {
            write(lines);
        }
    }

    private List<Line> lines() throws IOException {
        List<Line> lines = new ArrayList<>();
        for (String line : text().split("\n", -1)) {
            if (!line.isEmpty()) {
                lines.add(Line.read(line));
            }
        }
        return lines;
    }

    private String text() throws IOException {
        try {
            return new String(KeyBytes.read(file), StandardCharsets.ISO_8859_1);
        } catch (NoSuchFileException none) {
            return "";
        }
    }

    private void write(List<Line> lines) throws IOException {
        StringBuilder all = new StringBuilder();
        lines.forEach(line -> all.append(line.bytes).append('\n'));
        files.write(file, all.toString().getBytes(StandardCharsets.ISO_8859_1));
    }
}
