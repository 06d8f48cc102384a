package org.evenfall.card;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.evenfall.page.Face;
import org.evenfall.page.PagePicture;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** The seeded cards, each drawn and measured once for all tests; the first few also as pictures. */
final class DrawnCards {

    /** Cards that are drawn. */
    static final int COUNT = 200;

    /** Cards that are rendered. */
    static final int PICTURES = 12;

    static final float DPI = 200;

    /**
     * One drawn card.
     *
     * @param content what was drawn
     * @param letters its letters with their places
     * @param pictures its pages, empty unless it is one of the first
     */
    record Drawn(CardContent content, Letters letters, List<BufferedImage> pictures) {}

    private final List<Drawn> cards = new ArrayList<>();

    DrawnCards() throws Exception {
        Random random = new Random(148);
        for (int i = 0; i < COUNT; i++) {
            CardContent content = CardSamples.seeded(random);
            byte[] pdf = CardPdf.draw(content, CardSamples.WHEN);
            cards.add(new Drawn(content, Letters.of(pdf), i < PICTURES ? PagePicture.render(pdf, DPI) : List.of()));
        }
    }

    List<Drawn> all() {
        return cards;
    }

    List<Drawn> pictured() {
        return cards.subList(0, PICTURES);
    }

    /** Gives the one set to every test that has it as a parameter. */
    static final class Shared implements ParameterResolver {

        @Override
        public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
            return parameter.getParameter().getType().equals(DrawnCards.class);
        }

        @Override
        public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
            return context.getRoot()
                    .getStore(ExtensionContext.Namespace.create(DrawnCards.class))
                    .getOrComputeIfAbsent(DrawnCards.class, key -> {
                        try {
                            return new DrawnCards();
                        } catch (Exception failed) {
                            throw new IllegalStateException(failed);
                        }
                    });
        }
    }

    /** The letters of a file with their boxes, in points from the top left of their page. */
    static final class Letters extends PDFTextStripper {

        /**
         * Box of a letter.
         *
         * @param page page from 1
         */
        record Box(int page, char letter, float left, float top, float right, float bottom) {}

        /** Font size of the values that the driver sets, points. */
        private static final float LARGE = 24;

        /** Font size of what is read while driving, points. */
        private static final float READABLE = 14;

        /** Height of a capital divided by the font size. */
        private static final float CAPITAL = 0.70f;

        private final List<String> outside = new ArrayList<>();
        private final List<Box> boxes = new ArrayList<>();
        private final StringBuilder text = new StringBuilder();
        private final StringBuilder large = new StringBuilder();
        private final StringBuilder readable = new StringBuilder();
        private float smallest = Float.MAX_VALUE;

        private Letters() {
            setSortByPosition(false);
        }

        static Letters of(byte[] pdf) throws Exception {
            try (PDDocument document = Loader.loadPDF(pdf)) {
                Letters letters = new Letters();
                letters.getText(document);
                return letters;
            }
        }

        @Override
        protected void processTextPosition(TextPosition letter) {
            super.processTextPosition(letter);
            float width = getCurrentPage().getMediaBox().getWidth();
            float height = getCurrentPage().getMediaBox().getHeight();
            float margin = (float) Face.MARGIN - 0.5f;
            text.append(letter.getUnicode());
            if (letter.getFontSizeInPt() >= LARGE) {
                large.append(letter.getUnicode());
            }
            if (letter.getFontSizeInPt() >= READABLE) {
                readable.append(letter.getUnicode());
            }
            smallest = Math.min(smallest, letter.getFontSizeInPt());
            float top = letter.getY() - letter.getFontSizeInPt() * CAPITAL;
            if (!letter.getUnicode().isBlank()) {
                boxes.add(new Box(
                        getCurrentPageNo(),
                        letter.getUnicode().charAt(0),
                        letter.getX(),
                        top,
                        letter.getX() + letter.getWidth(),
                        letter.getY()));
                if (letter.getX() < margin
                        || letter.getX() + letter.getWidth() > width - margin
                        || top < margin
                        || letter.getY() > height - margin) {
                    outside.add(letter.getUnicode() + " at " + letter.getX() + ", " + letter.getY());
                }
            }
        }

        /** Letters outside the margins. */
        List<String> outside() {
            return outside;
        }

        List<Box> boxes() {
            return boxes;
        }

        /** Smallest font size, points. */
        float smallest() {
            return smallest;
        }

        /** All letters without blanks. */
        String text() {
            return withoutBlanks(text);
        }

        /** The letters of at least 24 points, without blanks. */
        String large() {
            return withoutBlanks(large);
        }

        /** The letters of at least 14 points, without blanks. */
        String readable() {
            return withoutBlanks(readable);
        }

        static String withoutBlanks(CharSequence text) {
            return text.toString().replaceAll("[\\s\u00a0]", "");
        }

        /** Places where two letters overlap by more than a point in both directions. */
        List<String> overlaps() {
            List<String> found = new ArrayList<>();
            for (int i = 0; i < boxes.size(); i++) {
                for (int j = i + 1; j < boxes.size(); j++) {
                    Box a = boxes.get(i);
                    Box b = boxes.get(j);
                    float across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
                    float down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
                    if (a.page == b.page && across > 1 && down > 1) {
                        found.add("page " + a.page + " at " + a.left + ", " + a.bottom);
                    }
                }
            }
            return found;
        }
    }
}
