package org.evenfall.publish;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.report.ReportContent.Block;
import org.evenfall.report.ReportContent.Heading;
import org.evenfall.report.ReportContent.Level;
import org.evenfall.report.ReportContent.Pair;
import org.evenfall.report.ReportContent.Text;
import org.evenfall.result.CardLines;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;

/** The end of a report: findings still open, prompts skipped, and where limits and models come from. */
record ReportEnd(Setup setup, Assessment assessment, Sentences words, ReportSources sources) {

    private static final List<FindingKind> OPEN = List.of(FindingKind.STOP, FindingKind.MISSING, FindingKind.WARNING);

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        section(blocks, "report.open", findings());
        section(blocks, "report.skipped", skipped());
        section(blocks, "result.sources", sources.blocks());
        return blocks;
    }

    private void section(List<Block> blocks, String key, List<Block> content) {
        blocks.add(new Heading(Level.SECTION, words.text(key)));
        blocks.addAll(content.isEmpty() ? List.of(new Text(words.text("report.none"))) : content);
    }

    private List<Block> findings() {
        return OPEN.stream()
                .flatMap(kind -> CardLines.findings(assessment, kind).stream())
                .<Block>map(finding -> new Pair(
                        words.choice(finding.kind()), words.choice(finding.step()) + ": " + sources.sentence(finding)))
                .toList();
    }

    /** What a skipped prompt is called, and what it means to go on without it. */
    private List<Block> skipped() {
        return setup.guide().skipped().stream()
                .filter(id -> words.has("prompt." + id + ".name"))
                .sorted()
                .<Block>map(id -> new Pair(
                        id + "  " + words.text("prompt." + id + ".name"),
                        words.has("prompt." + id + ".without") ? words.text("prompt." + id + ".without") : ""))
                .toList();
    }
}
