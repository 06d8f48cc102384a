package org.evenfall.page;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.COSObjectable;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** The structure tree that a screen reader follows (ISO 32000-1, 14.7): headings, lines, lists, figures in reading order. */
public final class Tags {

    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement document = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);
    private final Map<PDPage, COSArray> marked = new LinkedHashMap<>();

    Tags(PDDocument pages) {
        root.appendKid(document);
        pages.getDocumentCatalog().setStructureTreeRoot(root);
        PDMarkInfo info = new PDMarkInfo();
        info.setMarked(true);
        pages.getDocumentCatalog().setMarkInfo(info);
    }

    /**
     * A new element at the end of the document.
     *
     * @param type a type of {@link StandardStructureTypes}
     */
    public PDStructureElement element(String type) {
        return element(document, type);
    }

    /** A new element at the end of another. */
    public PDStructureElement element(PDStructureElement parent, String type) {
        PDStructureElement element = new PDStructureElement(type, parent);
        parent.appendKid(element);
        return element;
    }

    /** A new figure at the end of the document, with the same in words. */
    public PDStructureElement figure(String alternative) {
        PDStructureElement figure = element(StandardStructureTypes.Figure);
        figure.setAlternateDescription(alternative);
        return figure;
    }

    /** The identifier of the next marked content of a page, which belongs to an element. */
    int next(PDPage page, PDStructureElement element) {
        COSArray owners = marked.computeIfAbsent(page, fresh -> new COSArray());
        int number = owners.size();
        owners.add(element);
        if (element.getPage() == null) {
            element.setPage(page);
        }
        if (element.getPage().equals(page)) {
            element.appendKid(number);
        } else {
            // an element that continues on another page names the page (ISO 32000-1, 14.7.4.2)
            PDMarkedContentReference continued = new PDMarkedContentReference();
            continued.setPage(page);
            continued.setMCID(number);
            element.appendKid(continued);
        }
        return number;
    }

    /** Writes the way back from marked content to elements; to be called once, when everything is drawn. */
    void close() {
        Map<Integer, COSObjectable> owners = new LinkedHashMap<>();
        int key = 0;
        for (Map.Entry<PDPage, COSArray> page : marked.entrySet()) {
            page.getKey().setStructParents(key);
            owners.put(key, new PDParentTreeValue(page.getValue()));
            key++;
        }
        PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
        tree.setNumbers(owners);
        root.setParentTree(tree);
        root.setParentTreeNextKey(key);
    }
}
