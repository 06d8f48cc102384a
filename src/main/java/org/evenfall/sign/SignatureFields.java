package org.evenfall.sign;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.jspecify.annotations.Nullable;

/** The signatures in the form of a document. Any depth of fields is walked without recursion, a circle of them once. */
final class SignatureFields {

    private SignatureFields() {}

    private record Field(COSDictionary dictionary, boolean signature) {}

    static List<PDSignature> of(PDDocument document) {
        List<PDSignature> signatures = new ArrayList<>();
        COSDictionary form = document.getDocumentCatalog().getCOSObject().getCOSDictionary(COSName.ACRO_FORM);
        if (form == null) {
            return signatures;
        }
        Set<COSDictionary> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Field> open = new ArrayDeque<>();
        add(open, form.getCOSArray(COSName.FIELDS), false);
        while (!open.isEmpty()) {
            Field field = open.pop();
            if (seen.add(field.dictionary)) {
                COSName type = field.dictionary.getCOSName(COSName.FT);
                boolean signature = type == null ? field.signature : type.equals(COSName.SIG);
                COSDictionary value = field.dictionary.getCOSDictionary(COSName.V);
                if (signature && value != null && seen.add(value)) {
                    signatures.add(new PDSignature(value));
                }
                add(open, field.dictionary.getCOSArray(COSName.KIDS), signature);
            }
        }
        return signatures;
    }

    private static void add(Deque<Field> open, @Nullable COSArray fields, boolean signature) {
        for (int i = 0; fields != null && i < fields.size(); i++) {
            if (fields.getObject(i) instanceof COSDictionary field) {
                open.push(new Field(field, signature));
            }
        }
    }
}
