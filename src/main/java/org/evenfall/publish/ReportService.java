package org.evenfall.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import org.evenfall.finding.Sentences;
import org.evenfall.publish.SheetService.SheetPaper;
import org.evenfall.report.ReportPdf;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.WholeFileWriter;

/** Draws and writes the report of a setup for the farm's records. */
public final class ReportService {

    private final Sentences words;
    private final Clock clock;

    /**
     * A service for reports in a language.
     *
     * @param words the program's sentences
     * @param clock gives day and time of printing
     */
    public ReportService(Sentences words, Clock clock) {
        this.words = words;
        this.clock = clock;
    }

    /** The report as a PDF file. */
    public byte[] pages(Setup setup, Assessment assessment, SheetPaper paper) throws IOException {
        return ReportPdf.draw(
                ReportContents.of(setup, assessment, words, LocalDateTime.now(clock)), paper.size(), clock.instant());
    }

    /**
     * Writes the report to a file, whole or not at all.
     *
     * @throws CardFileException when the file cannot be written; an older one is then unchanged
     */
    public void write(Setup setup, Assessment assessment, SheetPaper paper, Path file) throws IOException {
        byte[] pages = pages(setup, assessment, paper);
        try {
            WholeFileWriter.write(file, pages);
        } catch (IOException notWritten) {
            throw new CardFileException(file, "cannot be written; nothing was changed", notWritten);
        }
    }
}
