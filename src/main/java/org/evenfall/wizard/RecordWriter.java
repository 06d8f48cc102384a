package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import org.evenfall.finding.Arg;
import org.evenfall.publish.SeasonRecordService;
import org.evenfall.publish.SheetService;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.FreeNames;
import org.evenfall.store.InputFileException;
import org.evenfall.store.WholeFileWriter;

/** Writes the record of a season, as a table and as pages, on a thread of its own, and shows the pages. */
final class RecordWriter {

    private final WizardContext context;
    private final SetupDocument document;
    private final SeasonRecordService records;

    RecordWriter(WizardContext context, SetupDocument document) {
        this.context = context;
        this.document = document;
        this.records = new SeasonRecordService(context.words(), context.clock(), context.assess());
    }

    /** Writes those of all setups of a season. */
    void write(int season) {
        List<Setup> setups = new ArrayList<>();
        List<String> unreadable = new ArrayList<>();
        for (Path file : context.user().setups(context.user().season(season))) {
            try {
                setups.add(document.load(file));
            } catch (InputFileException damaged) {
                unreadable.add(String.valueOf(file.getFileName()));
            }
        }
        Thread worker = new Thread(() -> write(season, setups, unreadable), "evenfall-record");
        worker.setDaemon(true);
        worker.start();
    }

    private void write(int season, List<Setup> setups, List<String> unreadable) {
        Path pages = FreeNames.in(context.user().records(), "record-" + season, ".pdf");
        String name = String.valueOf(pages.getFileName()).replaceFirst("\\.pdf$", "");
        Path table = pages.resolveSibling(name + ".csv");
        try {
            WholeFileWriter.write(table, records.csv(setups));
            WholeFileWriter.write(pages, records.pdf(setups, SheetService.SheetPaper.A4));
            context.reveal().accept(pages);
            show(
                    unreadable.isEmpty() ? "record.written" : "record.writtenWithout",
                    pages.toString(),
                    String.join(", ", unreadable));
        } catch (IOException notWritten) {
            show("document.notSaved", String.valueOf(notWritten.getMessage()), "");
        }
    }

    private void show(String key, String file, String without) {
        Platform.runLater(
                () -> document.frame().showNotice(context.words().text(key, Arg.text(file), Arg.text(without))));
    }
}
