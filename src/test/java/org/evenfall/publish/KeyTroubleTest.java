package org.evenfall.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.sign.KeyException;
import org.evenfall.sign.SigningKeys;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class KeyTroubleTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.ENGLISH);

    @TempDir
    Path folder;

    @Test
    void whatTheSystemReportsOfAFileFollowsItsSentence() {
        Path missing = folder.resolve("missing.p12");

        assertThat(sentence(missing)).isEqualTo("That is no key file, or it is damaged. (" + missing + ")");
    }

    @Test
    void whatTheReaderReportsOfAFileFollowsItsSentence() throws Exception {
        Path text = Files.writeString(folder.resolve("key.p12"), "no key");

        assertThat(sentence(text))
                .startsWith("That is no key file, or it is damaged. (")
                .endsWith(")");
    }

    private static String sentence(Path file) {
        KeyException trouble =
                catchThrowableOfType(KeyException.class, () -> SigningKeys.load(file, "secret".toCharArray()));
        return KeyTrouble.sentence(WORDS, trouble);
    }
}
