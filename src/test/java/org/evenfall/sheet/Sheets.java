package org.evenfall.sheet;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.page.SheetSize;
import org.evenfall.publish.SheetService;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sheet.SheetContent.Box;
import org.evenfall.sheet.SheetContent.Part;
import org.evenfall.store.SetupJson;

/** The sheets of a setup, for the tests of this room. */
final class Sheets {

    static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
    static final Instant WHEN = Instant.parse("2027-03-18T09:00:00Z");
    static final LocalDateTime PRINTED = LocalDateTime.of(2027, 3, 18, 9, 0);
    static final SheetSize A4 = SheetSize.ofMm(210, 297);

    private Sheets() {}

    /** A demo by its name; the empty setup by the name "empty". */
    static Setup setup(String name) throws Exception {
        return name.equals("empty")
                ? Setup.EMPTY
                : new SetupJson().read(Files.readString(Path.of("demo", name + ".json")), name);
    }

    static SheetSize paper(String name) {
        return name.equals("letter") ? SheetSize.LETTER : A4;
    }

    static SheetContent of(Setup setup) {
        return of(setup, Assessor.assess(setup));
    }

    static SheetContent of(Setup setup, Assessment assessment) {
        return SheetContents.of(
                setup, assessment, WORDS, SheetService.lines(setup, assessment, WORDS, PRINTED), SheetPart.ALL);
    }

    static Part yard(Setup setup) {
        return of(setup).parts().get(0);
    }

    static Part field(Setup setup) {
        return of(setup).parts().get(1);
    }

    /** The boxes of one prompt. */
    static List<Box> boxes(Part part, String promptId) {
        return part.boxes().stream()
                .filter(box -> box.promptId().equals(promptId))
                .toList();
    }
}
