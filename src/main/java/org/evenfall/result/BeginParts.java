package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;

/** Steps 0 and 1: the job, the product. */
final class BeginParts {

    private BeginParts() {}

    static List<ResultPart> start(Setup setup, Assessment assessment, Sentences words) {
        return List.of(ResultPart.of(StartLines.job(words, setup, assessment.tramlineWidthM())));
    }

    static List<ResultPart> product(Setup setup, Assessment assessment, Sentences words) {
        List<ResultLine> lines = new ArrayList<>(ProductLines.identity(words, setup));
        ResultLine.addSentence(
                lines, ProductLines.density(words, assessment.product().density()));
        ResultLine.addSentence(
                lines, ProductLines.sieve(words, assessment.product().sieve()));
        return List.of(ResultPart.of(lines));
    }
}
