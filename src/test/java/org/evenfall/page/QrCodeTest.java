package org.evenfall.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Random;
import org.evenfall.card.CardContent;
import org.evenfall.card.CardSamples;
import org.junit.jupiter.api.Test;

class QrCodeTest {

    /** Whatever the settings are called, they fit version 12 at level M, which a phone reads at 100 dots an inch. */
    @Test
    void theCodeIsSmallEnough() throws Exception {
        Random random = new Random(12);
        for (int i = 0; i < 200; i++) {
            CardContent content = CardSamples.seeded(random);
            String text = content.heading().title() + "\n" + content.code().text() + "\n"
                    + CardSamples.words(random, random.nextInt(60));
            assertThat(QrCode.code(text).getVersion().getVersionNumber()).isLessThanOrEqualTo(12);
            assertThat(QrCode.code(text).getECLevel()).isEqualTo(ErrorCorrectionLevel.M);
        }
    }

    /** Whole lines up to 280 bytes of UTF-8; the first line that does not fit ends the text. */
    @Test
    void wholeLinesAreLeftOut() {
        String line = "x".repeat(279);
        assertThat(QrCode.fitted(line)).isEqualTo(line);
        assertThat(QrCode.fitted("x" + line)).isEqualTo("x" + line);
        assertThat(QrCode.fitted("xx" + line)).isEmpty();
        assertThat(QrCode.fitted("a\n" + line + "\nb")).isEqualTo("a\n" + line);
        assertThat(QrCode.fitted("a\nx" + line + "\nb")).isEqualTo("a");
        assertThat(QrCode.fitted("ø".repeat(140))).hasSize(140);
        assertThat(QrCode.fitted("ø".repeat(141))).isEmpty();
    }
}
