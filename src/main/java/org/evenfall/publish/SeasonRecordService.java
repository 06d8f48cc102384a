package org.evenfall.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.function.Function;
import org.evenfall.finding.Sentences;
import org.evenfall.page.SheetSize;
import org.evenfall.report.ReportPdf;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;

/** The record of a season for the farm's nutrient records, from the logs of several setups: a table and pages. */
public final class SeasonRecordService {

    private final Sentences words;
    private final Clock clock;
    private final Function<Setup, Assessment> assess;

    /**
     * A service for records in a language.
     *
     * @param words the program's sentences
     * @param clock gives day and time of printing
     */
    public SeasonRecordService(Sentences words, Clock clock) {
        this(words, clock, Assessor::assess);
    }

    /**
     * The same with another way to an assessment.
     *
     * @param assess gives the assessment of a setup
     */
    public SeasonRecordService(Sentences words, Clock clock, Function<Setup, Assessment> assess) {
        this.words = words;
        this.clock = clock;
        this.assess = assess;
    }

    /** The record as a table, UTF-8 without a byte order mark; only its header where nothing is logged. */
    public byte[] csv(List<Setup> setups) {
        return SeasonCsv.of(SeasonRecord.of(setups, assess)).getBytes(StandardCharsets.UTF_8);
    }

    /** The record as a PDF file, the paper lying on its long side. */
    public byte[] pdf(List<Setup> setups, SheetSize paper) throws IOException {
        return ReportPdf.draw(
                SeasonBlocks.of(SeasonRecord.of(setups, assess), words, LocalDateTime.now(clock)),
                new SheetSize(Math.max(paper.widthPt(), paper.heightPt()), Math.min(paper.widthPt(), paper.heightPt())),
                clock.instant());
    }

    /** The same on a paper of the sheets. */
    public byte[] pdf(List<Setup> setups, SheetService.SheetPaper paper) throws IOException {
        return pdf(setups, paper.size());
    }
}
