package org.evenfall.card;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The text of a file by page: all of it, and what a screen reader reaches through the structure tree. */
final class StructureTree {

    private final PDDocument document;
    private final StringBuilder read = new StringBuilder();
    private final Map<Integer, StringBuilder> reached = new LinkedHashMap<>();
    private final Map<Integer, StringBuilder> all = new LinkedHashMap<>();

    private StructureTree(PDDocument document) throws IOException {
        this.document = document;
        Map<Integer, Map<Integer, String>> marked = new LinkedHashMap<>();
        for (int page = 0; page < document.getNumberOfPages(); page++) {
            PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
            extractor.processPage(document.getPage(page));
            Map<Integer, String> texts = new LinkedHashMap<>();
            for (PDMarkedContent content : extractor.getMarkedContents()) {
                texts.put(content.getMCID(), text(content));
            }
            marked.put(page, texts);
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(page + 1);
            stripper.setEndPage(page + 1);
            all.put(page, new StringBuilder(stripper.getText(document)));
            reached.put(page, new StringBuilder());
        }
        walk(document.getDocumentCatalog().getStructureTreeRoot(), null, marked);
    }

    static StructureTree of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new StructureTree(document);
        }
    }

    private static String text(PDMarkedContent content) {
        StringBuilder text = new StringBuilder();
        for (Object part : content.getContents()) {
            if (part instanceof TextPosition letter) {
                text.append(letter.getUnicode());
            } else if (part instanceof PDMarkedContent inner) {
                text.append(text(inner));
            }
        }
        return text.toString();
    }

    private void walk(PDStructureNode node, PDPage page, Map<Integer, Map<Integer, String>> marked) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                walk(element, element.getPage(), marked);
            } else if (kid instanceof PDMarkedContentReference reference) {
                take(reference.getPage() == null ? page : reference.getPage(), reference.getMCID(), marked);
            } else if (kid instanceof Integer number) {
                take(page, number, marked);
            }
        }
    }

    /** Takes each marked content once: a second reference to it finds nothing. */
    private void take(PDPage page, int number, Map<Integer, Map<Integer, String>> marked) {
        int index = document.getPages().indexOf(page);
        String text = marked.get(index).remove(number);
        read.append(text);
        reached.get(index).append(text);
    }

    int pages() {
        return all.size();
    }

    /** All text in the order of the tree, without blanks. */
    String read() {
        return DrawnCards.Letters.withoutBlanks(read);
    }

    /** All text as it is printed, page by page. */
    String text() {
        return String.join("\n", all.values());
    }

    /** The letters of each page that the tree does not reach, in their order by alphabet; empty where it reaches all. */
    List<String> missing() {
        return all.keySet().stream()
                .map(page -> without(all.get(page), reached.get(page)))
                .toList();
    }

    /** The letters of each page that the tree has and the page does not show. */
    List<String> invented() {
        return all.keySet().stream()
                .map(page -> without(reached.get(page), all.get(page)))
                .toList();
    }

    private static String without(StringBuilder text, StringBuilder taken) {
        Map<Integer, Integer> counts = new TreeMap<>();
        DrawnCards.Letters.withoutBlanks(text).codePoints().forEach(letter -> counts.merge(letter, 1, Integer::sum));
        DrawnCards.Letters.withoutBlanks(taken).codePoints().forEach(letter -> counts.merge(letter, -1, Integer::sum));
        StringBuilder left = new StringBuilder();
        counts.forEach((letter, count) -> left.append(Character.toString(letter).repeat(Math.max(0, count))));
        return left.toString();
    }
}
