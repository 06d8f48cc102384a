package org.evenfall.publish;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.DateText;
import org.evenfall.report.ReportContent.Block;
import org.evenfall.report.ReportContent.Heading;
import org.evenfall.report.ReportContent.Level;
import org.evenfall.report.ReportContent.Notice;
import org.evenfall.result.CardLines;
import org.evenfall.result.ResultLine;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.Text;

/** The head of a report: what it is about, whether a card can be made, and what comes first. */
record ReportHead(Setup setup, Assessment assessment, Sentences words) {

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(Level.TITLE, words.text("report.title")));
        List<String> first = new ArrayList<>();
        if (setup.guide().isInvented()) {
            first.add(words.text("report.invented"));
        }
        first.add(words.text("report.first"));
        first.add(words.text("report.levels"));
        blocks.add(new Notice(first));
        blocks.addAll(ReportBlocks.of(about()));
        return blocks;
    }

    private List<ResultLine> about() {
        List<ResultLine> lines = new ArrayList<>();
        add(lines, StartPaths.FARM);
        add(lines, StartPaths.FIELD);
        add(lines, StartPaths.CROP);
        ResultLine.addTyped(lines, words, "start.machine", MachinePaths.NAME.get(setup));
        add(lines, ProductPaths.NAME);
        add(lines, ProductPaths.DELIVERY);
        ResultLine.addTyped(lines, words, StartPaths.TRAMLINE_WIDTH.labelKey(), StartPaths.TRAMLINE_WIDTH.get(setup));
        lines.add(new ResultLine(words.text(CardPaths.DATE.labelKey()), date()));
        lines.add(ResultLine.sentence(CardLines.answer(words, assessment)));
        return lines;
    }

    private void add(List<ResultLine> lines, Text<?> entry) {
        ResultLine.addTyped(lines, words, entry.labelKey(), entry.get(setup));
    }

    /** Date and revision of the card, as far as there are any. */
    private String date() {
        String date = DateText.iso(CardPaths.DATE.get(setup));
        int revision = setup.card().revision();
        return revision == 0 ? date : words.text("card.dated", Arg.text(date), Arg.count(revision));
    }
}
