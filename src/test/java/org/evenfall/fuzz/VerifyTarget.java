package org.evenfall.fuzz;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Objects;
import java.util.Set;
import org.evenfall.sign.PdfVerifier;
import org.evenfall.sign.VerifyResult;

/** A file that may be a card: only the very bytes that were signed are unchanged under the key that signed them. */
final class VerifyTarget {

    private static final byte[] SIGNED = signed();
    private static final Set<String> KNOWN = known();

    private VerifyTarget() {}

    static byte[] signed() {
        try (InputStream in = Objects.requireNonNull(VerifyTarget.class.getResourceAsStream("verify/signed.pdf"))) {
            return in.readAllBytes();
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static Set<String> known() {
        try {
            return Set.of(PdfVerifier.verify(SIGNED, Set.of()).keyCode());
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    static void take(byte[] input) {
        try {
            VerifyResult result = PdfVerifier.verify(input, KNOWN);
            if (result.unchanged() && result.knownKey()) {
                Targets.require(Arrays.equals(input, SIGNED), "changed, and not seen");
            }
        } catch (IOException refused) {
            return;
        }
    }
}
