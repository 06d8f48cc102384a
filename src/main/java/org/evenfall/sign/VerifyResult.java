package org.evenfall.sign;

/**
 * The answer of a verification.
 *
 * @param signed the file holds a signature
 * @param unchanged every signed byte is as it was when signed, and the signature covers the file to its end
 * @param appended something was added after signing
 * @param signedBy name written into the signature, empty when there is none
 * @param keyName name in the key's own certificate
 * @param keyCode short code of the key
 * @param knownKey the key is one known here
 * @param signedAt time written into the signature, ISO 8601 in UTC; the signer's own clock
 */
public record VerifyResult(
        boolean signed,
        boolean unchanged,
        boolean appended,
        String signedBy,
        String keyName,
        String keyCode,
        boolean knownKey,
        String signedAt) {

    static final VerifyResult UNSIGNED = new VerifyResult(false, false, false, "", "", "", false, "");
}
