package org.evenfall.sign;

import java.io.IOException;
import java.security.AlgorithmParameters;
import java.security.GeneralSecurityException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.crypto.Cipher;
import javax.crypto.EncryptedPrivateKeyInfo;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;
import org.bouncycastle.asn1.ASN1Encodable;
import org.bouncycastle.asn1.ASN1OctetString;
import org.bouncycastle.asn1.ASN1Primitive;
import org.bouncycastle.asn1.ASN1Sequence;
import org.bouncycastle.asn1.DERSequence;
import org.bouncycastle.asn1.pkcs.ContentInfo;
import org.bouncycastle.asn1.pkcs.EncryptedData;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.asn1.pkcs.Pfx;
import org.bouncycastle.asn1.pkcs.SafeBag;

/**
 * The encrypted parts of a PKCS#12 file (RFC 7292), each by itself. When the check over the whole file fails, they show
 * whether the passphrase is wrong, which opens none, or the file is damaged: damage in one part leaves the others.
 */
final class Pkcs12Parts {

    private Pkcs12Parts() {}

    /** Whether the passphrase opens at least one part. */
    static boolean anyOpensWith(byte[] file, char[] passphrase) {
        for (byte[] part : all(file)) {
            if (opens(part, passphrase)) {
                return true;
            }
        }
        return false;
    }

    /** Every part that can be found, in the form of an encrypted key. */
    private static List<byte[]> all(byte[] file) {
        List<byte[]> parts = new ArrayList<>();
        try {
            ContentInfo whole = Pfx.getInstance(file).getAuthSafe();
            for (ASN1Encodable each : ASN1Sequence.getInstance(octets(whole))) {
                addFrom(parts, each);
            }
        } catch (RuntimeException damaged) {
            // what was found up to here is tried
        }
        return parts;
    }

    private static void addFrom(List<byte[]> parts, ASN1Encodable content) {
        try {
            ContentInfo safe = ContentInfo.getInstance(content);
            if (safe.getContentType().equals(PKCSObjectIdentifiers.encryptedData)) {
                EncryptedData data = EncryptedData.getInstance(safe.getContent());
                parts.add(new DERSequence(new ASN1Encodable[] {data.getEncryptionAlgorithm(), data.getContent()})
                        .getEncoded());
            } else {
                addKeys(parts, octets(safe));
            }
        } catch (IOException | RuntimeException damaged) {
            // damage in this part leaves the next
        }
    }

    private static void addKeys(List<byte[]> parts, byte[] bags) throws IOException {
        for (Object each : ASN1Sequence.getInstance(bags)) {
            SafeBag bag = SafeBag.getInstance(each);
            if (bag.getBagId().equals(PKCSObjectIdentifiers.pkcs8ShroudedKeyBag)) {
                parts.add(bag.getBagValue().toASN1Primitive().getEncoded());
            }
        }
    }

    private static byte[] octets(ContentInfo info) {
        return ASN1OctetString.getInstance(info.getContent()).getOctets();
    }

    private static boolean opens(byte[] part, char[] passphrase) {
        PBEKeySpec secret = new PBEKeySpec(passphrase);
        byte[] plain = {};
        try {
            EncryptedPrivateKeyInfo info = new EncryptedPrivateKeyInfo(part);
            AlgorithmParameters parameters = info.getAlgParameters();
            String name = info.getAlgName().equals("PBES2") ? parameters.toString() : info.getAlgName();
            Cipher cipher = Cipher.getInstance(name);
            cipher.init(Cipher.DECRYPT_MODE, SecretKeyFactory.getInstance(name).generateSecret(secret), parameters);
            plain = cipher.doFinal(info.getEncryptedData());
            // bytes opened by another passphrase are no value of their own length, but for a rare accident
            return ASN1Primitive.fromByteArray(plain) != null;
        } catch (GeneralSecurityException | IOException | RuntimeException closed) {
            return false;
        } finally {
            secret.clearPassword();
            Arrays.fill(plain, (byte) 0);
        }
    }
}
