package org.evenfall.card;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.COSObjectable;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** What a screen reader follows: the pages' content as headings, lines, lists and pictures, in reading order. */
final class Tags {

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

    /** A new element at the end of the document. */
    PDStructureElement element(String type) {
        return element(document, type);
    }

    PDStructureElement element(PDStructureElement parent, String type) {
        PDStructureElement element = new PDStructureElement(type, parent);
        parent.appendKid(element);
        return element;
    }

    /** The number of the next stretch of content on a page, which belongs to an element. */
    int next(PDPage page, PDStructureElement element) {
        COSArray owners = marked.computeIfAbsent(page, fresh -> new COSArray());
        int number = owners.size();
        owners.add(element);
        if (element.getPage() == null) {
            element.setPage(page);
        }
        if (element.getPage().equals(page)) {
            element.appendKid(number);
        }
        return number;
    }

    /** Ties pages and elements together; to be called once, when everything is drawn. */
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
