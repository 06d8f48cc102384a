package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import javafx.application.Platform;
import org.evenfall.finding.Arg;
import org.evenfall.publish.SheetService;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sheet.SheetPart;
import org.evenfall.store.FreeNames;
import org.evenfall.wizard.form.SetupModel;

/** Writes a paper sheet into the folder of the farm and shows it in the system's viewer, which prints it. */
final class SheetWriter {

    private final WizardContext context;
    private final SetupDocument document;
    private final SheetService sheets;

    SheetWriter(WizardContext context, SetupDocument document) {
        this.context = context;
        this.document = document;
        this.sheets = new SheetService(context.words(), context.clock());
    }

    /** Writes one for the open setup; the window goes on meanwhile. */
    void write(SetupModel model, SheetPart part) {
        Setup setup = model.setup();
        Assessment assessment = model.assessment();
        Thread worker = new Thread(() -> write(setup, assessment, part), "evenfall-sheet");
        worker.setDaemon(true);
        worker.start();
    }

    private void write(Setup setup, Assessment assessment, SheetPart part) {
        Path file = FreeNames.in(context.user().sheets(), "sheet-" + part.name().toLowerCase(Locale.ROOT), ".pdf");
        try {
            sheets.write(setup, assessment, part, paper(setup), file);
            context.reveal().accept(file);
            show("sheet.written", file.toString());
        } catch (IOException notWritten) {
            show("document.notSaved", String.valueOf(notWritten.getMessage()));
        }
    }

    /** That of the card, as far as it says: Letter, else A4. */
    private static SheetService.SheetPaper paper(Setup setup) {
        return setup.card().paper() == Paper.LETTER ? SheetService.SheetPaper.LETTER : SheetService.SheetPaper.A4;
    }

    private void show(String key, String what) {
        Platform.runLater(() -> document.frame().showNotice(context.words().text(key, Arg.text(what))));
    }
}
