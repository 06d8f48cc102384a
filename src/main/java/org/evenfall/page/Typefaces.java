package org.evenfall.page;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The fonts of one document, embedded as subsets. A letter that the first font lacks is taken from the fallback; one that
 * both lack is shown as a white square, so that the gap is visible.
 */
public final class Typefaces {

    /** The weights used. */
    public enum Weight {
        /** Running text. */
        REGULAR("AtkinsonHyperlegibleNext_400Regular.ttf", "DejaVuSans.ttf"),
        /** Titles, values and warnings. */
        BOLD("AtkinsonHyperlegibleNext_700Bold.ttf", "DejaVuSans-Bold.ttf");

        private final String first;
        private final String fallback;

        Weight(String first, String fallback) {
            this.first = first;
            this.fallback = fallback;
        }
    }

    /** A part of a text in one font. */
    record Run(PDType0Font font, String text) {}

    private record Loaded(PDType0Font font, CmapLookup letters) {}

    private static final String UNKNOWN = "\u25a1";

    private final PDDocument document;
    private final Map<String, Loaded> loaded = new LinkedHashMap<>();

    /** Widths of letters that were measured already: the library searches several tables for each. */
    private final IdentityHashMap<PDType0Font, Map<Integer, Float>> widths = new IdentityHashMap<>();

    Typefaces(PDDocument document) {
        this.document = document;
    }

    private Loaded load(String file) throws IOException {
        Loaded known = loaded.get(file);
        if (known != null) {
            return known;
        }
        try (InputStream bytes = Typefaces.class.getResourceAsStream("/org/evenfall/fonts/" + file)) {
            if (bytes == null) {
                throw new IOException("font is missing from the program: " + file);
            }
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
            Loaded fresh = new Loaded(PDType0Font.load(document, font, true), font.getUnicodeCmapLookup());
            loaded.put(file, fresh);
            return fresh;
        }
    }

    /** Splits a text into parts that each have one font with all their letters. */
    List<Run> runs(Weight weight, String text) throws IOException {
        List<Run> runs = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        PDType0Font current = null;
        for (int letter : text.codePoints().toArray()) {
            Loaded font = load(weight.first);
            String shown = Character.toString(Character.isISOControl(letter) ? ' ' : letter);
            if (font.letters().getGlyphId(shown.codePointAt(0)) == 0) {
                font = load(weight.fallback);
                if (font.letters().getGlyphId(letter) == 0) {
                    shown = UNKNOWN;
                }
            }
            if (current != null && !current.equals(font.font())) {
                runs.add(new Run(current, part.toString()));
                part.setLength(0);
            }
            current = font.font();
            part.append(shown);
        }
        if (current != null) {
            runs.add(new Run(current, part.toString()));
        }
        return runs;
    }

    /** Width of a text on one line, points. */
    double width(TextStyle style, String text) throws IOException {
        double width = 0;
        for (Run run : runs(style.weight(), text)) {
            width += units(run) / 1000 * style.size();
        }
        return width;
    }

    /** Width of a run, 1/1000 of the font size: the sum of its letters, since the fonts have no kerning here. */
    private float units(Run run) throws IOException {
        Map<Integer, Float> known = widths.computeIfAbsent(run.font(), font -> new HashMap<>());
        float units = 0;
        for (int letter : run.text().codePoints().toArray()) {
            Float width = known.get(letter);
            if (width == null) {
                width = run.font().getStringWidth(Character.toString(letter));
                known.put(letter, width);
            }
            units += width;
        }
        return units;
    }
}
