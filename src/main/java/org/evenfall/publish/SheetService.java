package org.evenfall.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.page.SheetSize;
import org.evenfall.result.FirstMoveLines;
import org.evenfall.result.KitLines;
import org.evenfall.result.PrintedLine;
import org.evenfall.result.RateCheckLines;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.FieldMoves;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sheet.SheetContents;
import org.evenfall.sheet.SheetLines;
import org.evenfall.sheet.SheetPart;
import org.evenfall.sheet.SheetPdf;
import org.evenfall.store.WholeFileWriter;
import org.evenfall.trays.FirstMove;

/** Draws and writes the paper sheets for yard and field, for the wizard and the command line alike. */
public final class SheetService {

    /** Paper of the sheets and of the report. */
    public enum SheetPaper {
        /** ISO A4. */
        A4,
        /** US Letter. */
        LETTER;

        SheetSize size() {
            return switch (this) {
                case A4 -> SheetSize.ofMm(210, 297);
                case LETTER -> SheetSize.LETTER;
            };
        }
    }

    private final Sentences words;
    private final Clock clock;

    /**
     * A service for sheets in a language.
     *
     * @param words the program's sentences
     * @param clock gives day and time of printing
     */
    public SheetService(Sentences words, Clock clock) {
        this.words = words;
        this.clock = clock;
    }

    /** The sheets as a PDF file. */
    public byte[] pages(Setup setup, Assessment assessment, SheetPart part, SheetPaper paper) throws IOException {
        SheetLines lines = lines(setup, assessment, words, LocalDateTime.now(clock));
        return SheetPdf.draw(SheetContents.of(setup, assessment, words, lines, part), paper.size(), clock.instant());
    }

    /**
     * The results that the sheets show in the same words as both faces.
     *
     * @param when time of printing
     */
    public static SheetLines lines(Setup setup, Assessment assessment, Sentences words, LocalDateTime when) {
        FirstMove move = FieldMoves.first(assessment);
        return new SheetLines(
                KitLines.of(words, assessment),
                RateCheckLines.expected(words, assessment.rate()).stream()
                        .map(line -> line.label() + ": " + line.value())
                        .toList(),
                move == null ? List.of() : FirstMoveLines.of(words, move),
                PrintedLine.of(words, setup, when));
    }

    /**
     * Writes the sheets to a file, whole or not at all.
     *
     * @throws CardFileException when the file cannot be written; an older one is then unchanged
     */
    public void write(Setup setup, Assessment assessment, SheetPart part, SheetPaper paper, Path file)
            throws IOException {
        byte[] pages = pages(setup, assessment, part, paper);
        try {
            WholeFileWriter.write(file, pages);
        } catch (IOException notWritten) {
            throw new CardFileException(file, "cannot be written; nothing was changed", notWritten);
        }
    }
}
