package org.evenfall.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** No changed byte of a signed file leaves it unchanged, and no cut leaves it a file that was never signed. */
class FlippedByteTest {

    private static final int[] MASKS = {0x01, 0x02, 0x07, 0x20, 0x73, 0x80};

    private static SigningKey key;
    private static byte[] file;
    private static int[] range;

    @BeforeAll
    static void once() throws Exception {
        key = SamplePdf.foreign("RSA", 2048, "CN=A. Marlow");
        file = SamplePdf.signed(key);
        range = SamplePdf.range(file);
    }

    private static boolean unchanged(int at, int mask) {
        byte[] changed = file.clone();
        changed[at] ^= (byte) mask;
        try {
            return PdfVerifier.verify(changed, Set.of(key.code())).unchanged();
        } catch (IOException damaged) {
            return false;
        }
    }

    @Test
    void aFlippedByteShows() throws Exception {
        assertThat(PdfVerifier.verify(file, Set.of()).unchanged()).isTrue();
        Random random = new Random(15);
        for (int i = 0; i < 1500; i++) {
            int at = i < 1000 ? range[1] + random.nextInt(range[2] - range[1]) : random.nextInt(file.length);
            int mask = i % 3 == 0 ? 0x20 : 1 + random.nextInt(255);
            assertThat(unchanged(at, mask)).as("byte " + at + " mask " + mask).isFalse();
        }
        for (int at = range[1] - 60; at < range[2] + 60; at = at == range[1] + 60 ? range[2] - 60 : at + 1) {
            for (int mask : new int[] {0x01, 0x20}) {
                assertThat(unchanged(at, mask))
                        .as("byte " + at + " mask " + mask)
                        .isFalse();
            }
        }
    }

    /** Every byte of the whole file with each mask. */
    @Test
    @Tag("slow")
    void everyFlippedByteShows() {
        for (int at = 0; at < file.length; at++) {
            for (int mask : MASKS) {
                assertThat(unchanged(at, mask))
                        .as("byte " + at + " mask " + mask)
                        .isFalse();
            }
        }
    }

    /** Where the range is written, a changed byte may make it unreadable: then the file is damaged, never unsigned. */
    @Test
    void aFlippedByteOfTheRangeIsNeverUnsigned() {
        int at = new String(file, StandardCharsets.ISO_8859_1).lastIndexOf("/ByteRange");
        for (int i = at; i < at + 40; i++) {
            for (int mask = 1; mask < 256; mask++) {
                byte[] changed = file.clone();
                changed[i] ^= (byte) mask;
                try {
                    assertThat(PdfVerifier.verify(changed, Set.of()).signed())
                            .as("byte " + i + " mask " + mask)
                            .isTrue();
                } catch (IOException damaged) {
                    assertThat(damaged).isNotNull();
                }
            }
        }
    }

    /** Every byte of the signature value itself, its unsigned parts and its chain too, of both kinds of keys. */
    @Test
    void aFlippedByteOfTheSignatureShows() throws Exception {
        SigningKey issuer = SamplePdf.foreign("EC", 384, "CN=Saltreed group");
        SigningKey curve = SamplePdf.foreign("EC", 256, "CN=R. Fenwick");
        byte[] data = {1, 2, 3};
        for (SigningKey by : List.of(
                key,
                curve,
                new SigningKey(
                        curve.privateKey(), curve.certificate(), List.of(curve.certificate(), issuer.certificate())))) {
            byte[] signature = Cms.sign(data, by);
            assertThat(Cms.signer(data, signature)).isEqualTo(by.certificate());
            Random masks = new Random(16);
            for (int at = 0; at < signature.length; at++) {
                for (int mask : new int[] {0x01, 0x0A, 1 + masks.nextInt(255)}) {
                    byte[] changed = signature.clone();
                    changed[at] ^= (byte) mask;
                    assertThat(Cms.signer(data, changed))
                            .as("byte " + at + " mask " + mask)
                            .isNull();
                }
            }
        }
    }

    /**
     * A file that is cut anywhere is refused as damaged. Two places differ: without its last line break it
     * is a changed file, and cut exactly behind its pages it is the file that was to be signed.
     */
    @Test
    void aCutFileIsDamaged() throws Exception {
        byte[] pages = SamplePdf.unsigned();
        int signedFrom = pages.length;
        for (int length = 0;
                length < file.length;
                length += length % 500 == 0 || length > signedFrom - 20 && length < signedFrom + 60 ? 1 : 7) {
            byte[] cut = Arrays.copyOf(file, length);
            if (PdfBytes.ends(cut) && length < range[1]) {
                assertThat(length).isBetween(signedFrom - 2, signedFrom + 2);
            } else {
                assertThatThrownBy(() -> PdfVerifier.verify(cut, Set.of()))
                        .as("cut at " + length)
                        .isInstanceOf(IOException.class);
            }
        }
        VerifyResult lastBreak = PdfVerifier.verify(Arrays.copyOf(file, file.length - 1), Set.of());
        assertThat(lastBreak).matches(r -> r.signed() && !r.unchanged());
    }
}
