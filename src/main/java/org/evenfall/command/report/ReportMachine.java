package org.evenfall.command.report;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.result.HeightLines;
import org.evenfall.result.MachineCheckLines;
import org.evenfall.result.ResultLine;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;

/** Steps 3 and 4: the machine check, the height over the crop. */
final class ReportMachine {

    private ReportMachine() {}

    static List<ReportPart> check(Setup setup, Assessment assessment, Sentences words) {
        List<ResultLine> lines = new ArrayList<>(MachineCheckLines.parts(words, setup));
        lines.addAll(MachineCheckLines.measured(words, assessment.machineCheck()));
        return List.of(ReportPart.of(lines));
    }

    static List<ReportPart> height(Assessment assessment, Sentences words) {
        List<ResultLine> lines = new ArrayList<>(HeightLines.figures(words, assessment.height()));
        ResultLine.addSentence(lines, HeightLines.tenCentimetres(words, assessment.height()));
        return List.of(ReportPart.of(lines));
    }
}
