package org.evenfall.result;

import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;

/** The results of each step in words, part by part, for a page or a file to read. */
public final class StepParts {

    private StepParts() {}

    /** The parts of a step that have something to show. */
    public static List<ResultPart> of(Step step, Setup setup, Assessment assessment, Sentences words) {
        return ResultPart.filled(
                switch (step) {
                    case START -> BeginParts.start(setup, assessment, words);
                    case PRODUCT -> BeginParts.product(setup, assessment, words);
                    case MATCH -> MatchParts.parts(setup, assessment, words);
                    case MACHINE -> MachineParts.check(setup, assessment, words);
                    case HEIGHT -> MachineParts.height(assessment, words);
                    case RATE -> RateParts.parts(assessment, words);
                    case TRAYS -> TrayParts.parts(setup, assessment, words);
                    case CARD -> CardParts.parts(setup, assessment, words);
                });
    }
}
