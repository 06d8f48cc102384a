package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;

/** Steps 3 and 4: the machine check, the height over the crop. */
final class MachineParts {

    private MachineParts() {}

    static List<ResultPart> check(Setup setup, Assessment assessment, Sentences words) {
        List<ResultLine> lines = new ArrayList<>(MachineCheckLines.parts(words, setup));
        lines.addAll(MachineCheckLines.measured(words, assessment.machineCheck()));
        return List.of(ResultPart.of(lines));
    }

    static List<ResultPart> height(Assessment assessment, Sentences words) {
        List<ResultLine> lines = new ArrayList<>(HeightLines.figures(words, assessment.height()));
        ResultLine.addSentence(lines, HeightLines.tenCentimetres(words, assessment.height()));
        return List.of(ResultPart.of(lines));
    }
}
