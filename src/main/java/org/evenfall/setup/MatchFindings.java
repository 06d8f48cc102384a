package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.Direction;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.PatternChange;
import org.evenfall.reference.RankedProduct;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.MatchPaths;

/**
 * Step 2 in findings: what the chosen product's settings are worth, what the landing
 * model expects of them.
 */
final class MatchFindings {

    /** Assumption: a pattern whose CV changes by less counts as the same, points. */
    private static final double SAME_CV_POINTS = 2;

    private final ReadSetup read;
    private final MatchResult result;
    private final boolean chosenKnown;
    private final List<Finding> findings = new ArrayList<>();

    MatchFindings(ReadSetup read, MatchResult result, boolean chosenKnown) {
        this.read = read;
        this.result = result;
        this.chosenKnown = chosenKnown;
    }

    List<Finding> all() {
        if (result.outOfReach()) {
            return findings;
        }
        boolean without = read.get(MatchPaths.START_WITHOUT_REFERENCE) == YesNo.YES;
        RankedProduct chosen = result.chosen();
        if (chosen != null && (chosenKnown || !without)) {
            chosen(chosen);
        } else {
            againstDense();
        }
        pattern();
        return findings;
    }

    private void chosen(RankedProduct chosen) {
        Arg name = Arg.text(chosen.name());
        Arg direction = Arg.word(directionKey(result.direction()));
        switch (result.verdict()) {
            case HOLD -> findings.add(Finding.note(Step.MATCH, "match.hold", name));
            case HOLD_AS_START -> findings.add(Finding.note(Step.MATCH, "match.holdAsStart", name, direction));
            case FIRST_GUESS_ONLY -> findings.add(Finding.warn(Step.MATCH, "match.firstGuess", name, direction));
            case NOT_AT_THIS_WIDTH, NO_REFERENCE -> {
                // reported by ReachFindings or againstDense
            }
        }
    }

    /** Bundle key of a direction. */
    static String directionKey(Direction direction) {
        return "direction." + direction.name();
    }

    private void againstDense() {
        double againstM = result.throwAgainstDenseM() == null ? 0 : result.throwAgainstDenseM();
        findings.add(Finding.note(
                Step.MATCH,
                againstM < 0 ? "match.noReferenceShorter" : "match.noReferenceFurther",
                Arg.number(Math.abs(againstM), 1, Unit.M)));
    }

    /** What the landing model expects when the settings are kept. */
    private void pattern() {
        PatternChange pattern = result.pattern();
        if (pattern == null || result.overlay() == null) {
            return;
        }
        Arg before = Arg.number(pattern.referenceCvPercent(), 0, Unit.PERCENT);
        Arg kept = Arg.number(pattern.keptCvPercent(), 0, Unit.PERCENT);
        Arg low = Arg.number(pattern.keptCvIntervalPercent().low(), 0, Unit.PERCENT);
        Arg high = Arg.number(pattern.keptCvIntervalPercent().high(), 0, Unit.PERCENT);
        Arg reset = Arg.number(pattern.resetCvPercent(), 0, Unit.PERCENT);
        String name = result.overlay().otherName();
        if (result.overlay().otherId().isEmpty()) {
            findings.add(Finding.note(Step.MATCH, "match.keptDense", before, kept, low, high, reset));
        } else if (pattern.cvChangePercent() < SAME_CV_POINTS) {
            findings.add(Finding.note(Step.MATCH, "match.keptSame", Arg.text(name), kept));
        } else {
            findings.add(Finding.note(Step.MATCH, "match.keptWorse", Arg.text(name), before, kept, low, high, reset));
        }
    }
}
