package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UserFolderTest {

    private static final Path HOME = Path.of("home", "u");

    private static Path root(Map<String, String> environment, String system) {
        return UserFolder.of(environment, system, HOME).root();
    }

    /** Source (from memory): XDG Base Directory Specification: {@code XDG_CONFIG_HOME}, {@code .config} where it is not set. */
    @Test
    void theUsualFolderOfEachSystem() {
        assertThat(root(Map.of(), "Linux")).isEqualTo(HOME.resolve(".config").resolve("evenfall"));
        assertThat(root(Map.of("XDG_CONFIG_HOME", "c"), "Linux")).isEqualTo(Path.of("c", "evenfall"));
        assertThat(root(Map.of("XDG_CONFIG_HOME", " "), "Linux"))
                .isEqualTo(HOME.resolve(".config").resolve("evenfall"));
        assertThat(root(Map.of("APPDATA", "r"), "Windows 11")).isEqualTo(Path.of("r", "Evenfall"));
        assertThat(root(Map.of("APPDATA", "r"), "Linux"))
                .isEqualTo(HOME.resolve(".config").resolve("evenfall"));
        assertThat(root(Map.of(), "Windows 11"))
                .isEqualTo(HOME.resolve(".config").resolve("evenfall"));
        assertThat(root(Map.of("XDG_CONFIG_HOME", "c"), "Mac OS X"))
                .isEqualTo(
                        HOME.resolve("Library").resolve("Application Support").resolve("Evenfall"));
    }

    @Test
    void theOwnFolderComesFirst() {
        for (String system : new String[] {"Linux", "Windows 11", "Mac OS X"}) {
            assertThat(root(Map.of("EVENFALL_HOME", "own", "APPDATA", "r", "XDG_CONFIG_HOME", "c"), system))
                    .isEqualTo(Path.of("own"));
        }
        assertThat(root(Map.of("EVENFALL_HOME", " "), "Linux"))
                .isEqualTo(HOME.resolve(".config").resolve("evenfall"));
    }

    @Test
    void theFarmsFolderIsSeenUnlessAnOwnFolderIsNamed() {
        assertThat(UserFolder.of(Map.of(), "Linux", HOME).farm()).isEqualTo(HOME.resolve("Evenfall"));
        assertThat(UserFolder.of(Map.of("EVENFALL_HOME", "own"), "Linux", HOME).farm())
                .isEqualTo(Path.of("own"));
    }

    @Test
    void theSetupChangedLastComesFirstWhateverItsSeason(@TempDir Path folder) throws Exception {
        UserFolder user = new UserFolder(folder.resolve("settings"), folder.resolve("farm"));
        assertThat(user.recent()).isEmpty();
        long[] changed = {2000, 9000, 5000, 3000};
        Path[] places = {user.season(2026), user.season(2027), user.season(2026), folder.resolve("settings/setups")};
        for (int i = 0; i < changed.length; i++) {
            Files.createDirectories(places[i]);
            Path file = Files.writeString(places[i].resolve("s" + i + ".json"), "{}");
            Files.setLastModifiedTime(file, FileTime.fromMillis(changed[i]));
        }
        Files.writeString(user.season(2026).resolve("notes.txt"), "x");
        Files.createDirectories(user.machines());
        Files.writeString(user.machines().resolve("machine.json"), "{}");
        assertThat(user.recent())
                .extracting(file -> file.getFileName().toString())
                .containsExactly("s1.json", "s2.json", "s3.json", "s0.json");
    }
}
