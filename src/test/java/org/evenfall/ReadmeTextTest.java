package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ReadmeTextTest {

    private static List<String> parts(String page) {
        ReadmeText text = ReadmeText.of(page, List.of("Licence"));
        return text.parts().stream().map(text::of).toList();
    }

    @Test
    void sentencesGoOverLineBreaks() {
        assertThat(parts("It is 0.5 m\nhigh. `this` too: *Yes*. (No.) So e\n"))
                .containsExactly("It is 0.5 m high.", "`this` too:", "*Yes*.", "(No.)", "So e");
    }

    @Test
    void listItemsAndParagraphsEndASentence() {
        assertThat(parts("one\n\n* **Two**: the next\n  line. Three\n* four\n"))
                .containsExactly("one", "* **Two**: the next line.", "Three", "* four");
    }

    @Test
    void cellsOfATableWithoutItsHead() {
        assertThat(parts("| a | b |\n|---|---|\n| `x\\|y` | one. Two |\n| z | |\n"))
                .containsExactly("`x\\|y`", "one. Two", "z");
    }

    @Test
    void whatIsLeftOut() {
        assertThat(
                        parts(
                                "# Heading\n\ntext\n\n```\ncode\n```\n\n![a picture](x.png)\n\n## Licence\n\nA licence.\n\n## End\n\nend"))
                .containsExactly("text", "end");
    }
}
