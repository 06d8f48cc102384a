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
        Set<COSDictionary> values = Collections.newSetFromMap(new IdentityHashMap<>());
        for (COSDictionary field : fields(document)) {
            COSDictionary value = field.getCOSDictionary(COSName.V);
            if (value != null && values.add(value)) {
                signatures.add(new PDSignature(value));
            }
        }
        return signatures;
    }

    /** Whether a field names a signature, though what it names may be unreadable. */
    static boolean nameOne(PDDocument document) {
        return fields(document).stream().anyMatch(field -> field.containsKey(COSName.V));
    }

    /** The fields for signatures, signed or not. */
    private static List<COSDictionary> fields(PDDocument document) {
        List<COSDictionary> fields = new ArrayList<>();
        COSDictionary form = document.getDocumentCatalog().getCOSObject().getCOSDictionary(COSName.ACRO_FORM);
        if (form == null) {
            return fields;
        }
        Set<COSDictionary> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Field> open = new ArrayDeque<>();
        add(open, form.getCOSArray(COSName.FIELDS), false);
        while (!open.isEmpty()) {
            Field field = open.pop();
            if (seen.add(field.dictionary)) {
                COSName type = field.dictionary.getCOSName(COSName.FT);
                boolean signature = type == null ? field.signature : type.equals(COSName.SIG);
                if (signature) {
                    fields.add(field.dictionary);
                }
                add(open, field.dictionary.getCOSArray(COSName.KIDS), signature);
            }
        }
        return fields;
    }

    private static void add(Deque<Field> open, @Nullable COSArray fields, boolean signature) {
        for (int i = 0; fields != null && i < fields.size(); i++) {
            if (fields.getObject(i) instanceof COSDictionary field) {
                open.push(new Field(field, signature));
            }
        }
    }
}
