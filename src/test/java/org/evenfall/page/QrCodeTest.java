package org.evenfall.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QrCodeTest {

    /** Source (from memory): ISO/IEC 18004: the longest text fits version 16 at level M; a phone reads it at 100 dots an inch. */
    @ParameterizedTest
    @ValueSource(strings = {"x", "ø", "\u2212"})
    void theLongestCodeIsSmallEnough(String letter) throws Exception {
        int bytes = letter.getBytes(StandardCharsets.UTF_8).length;
        String longest = letter.repeat(QrCode.MOST_BYTES / bytes);
        assertThat(QrCode.fits(longest)).isTrue();
        assertThat(QrCode.code(longest).getVersion().getVersionNumber()).isLessThanOrEqualTo(16);
        assertThat(QrCode.code(longest).getECLevel()).isEqualTo(ErrorCorrectionLevel.M);
        assertThat(QrCode.fits(longest + letter)).isFalse();
    }

    /** What is too long is never cut here: whoever writes the text says what it leaves out. */
    @Test
    void aLongerTextIsRefused() {
        String longer = "x".repeat(QrCode.MOST_BYTES + 1);
        assertThatThrownBy(() -> QrCode.code(longer)).isInstanceOf(IllegalArgumentException.class);
    }
}
