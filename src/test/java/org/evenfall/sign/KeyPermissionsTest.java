package org.evenfall.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.evenfall.OrdinaryUser.mode;

import java.nio.file.Files;
import java.nio.file.Path;
import org.evenfall.OrdinaryUser;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Keys that this user may not read, as those of somebody else, and a folder that may not be written. */
@Tag("ordinary")
class KeyPermissionsTest {

    @TempDir
    private Path folder;

    private Path key;

    @BeforeEach
    void ordinary() throws Exception {
        OrdinaryUser.required(folder);
        key = folder.resolve("signing-key.p12");
    }

    @AfterEach
    void giveBack() throws Exception {
        mode(folder, "rwx------");
    }

    /** It is no missing key: none is made in its place. */
    @Test
    void aKeyThatMayNotBeReadStays() throws Exception {
        Files.writeString(key, "somebody else's");
        mode(key, "---------");
        KeyRing ring = FirstKeys.ring(folder);
        assertThat(ring.status().state()).isEqualTo(KeyRing.State.UNREADABLE);
        assertThatThrownBy(() -> ring.signing("A. Marlow", "", SamplePdf.WHEN)).isInstanceOf(KeyException.class);
        assertThatThrownBy(() -> ring.renew("A. Marlow", "", new char[0], SamplePdf.WHEN))
                .isInstanceOf(KeyException.class);
        mode(key, "rw-------");
        assertThat(key).hasContent("somebody else's");
    }

    @Test
    void aFolderThatMayNotBeWrittenIsNamedAsSuch() throws Exception {
        mode(folder, "r-xr-xr-x");
        assertThatThrownBy(() -> FirstKeys.ring(folder).signing("A. Marlow", "", SamplePdf.WHEN))
                .isInstanceOfSatisfying(
                        KeyException.class,
                        trouble -> assertThat(trouble.kind()).isEqualTo(KeyException.Kind.NOT_WRITTEN));
        assertThat(key).doesNotExist();
    }
}
