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
import org.evenfall.reference.TestedProduct;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.MatchPaths;

/**
 * Step 2 in findings: what the chosen product's settings are worth, what the landing
 * model expects of them.
 */
final class MatchFindings {

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
        Arg name = name(chosen.id(), chosen.name());
        Arg direction = Arg.word(directionKey(result.direction()));
        switch (result.verdict()) {
            case HOLD ->
                findings.add(Finding.note(Step.MATCH, "match.hold", name).from("source.verdict"));
            case HOLD_AS_START ->
                findings.add(Finding.note(Step.MATCH, "match.holdAsStart", name, direction)
                        .from("source.verdict"));
            case FIRST_GUESS_ONLY ->
                findings.add(Finding.note(Step.MATCH, "match.firstGuess", name, direction)
                        .from("source.verdict"));
            case NOT_AT_THIS_WIDTH, NO_REFERENCE -> {
                // reported by ReachFindings or againstDense
            }
        }
    }

    /** Bundle key of a direction. */
    static String directionKey(Direction direction) {
        return "direction." + direction.name();
    }

    private static Arg name(String id, String name) {
        return id.equals(TestedProduct.TODAY_ID) ? Arg.word("match.today") : Arg.text(name);
    }

    private void againstDense() {
        Direction direction = result.directionAgainstDense();
        findings.add(Finding.note(Step.MATCH, "match.noReference." + direction.name())
                .from("source.flightModel"));
    }

    /** What the landing model expects when the settings are kept: a change, never a CV. */
    private void pattern() {
        PatternChange pattern = result.pattern();
        if (pattern == null || result.overlay() == null) {
            return;
        }
        Arg change = Arg.number(pattern.cvChangePercent(), 0, Unit.NONE);
        Arg low = Arg.number(Math.max(0, pattern.changeIntervalPercent().low()), 0, Unit.NONE);
        Arg high = Arg.number(pattern.changeIntervalPercent().high(), 0, Unit.NONE);
        String id = result.overlay().otherId();
        Arg name = name(id, result.overlay().otherName());
        Finding finding;
        if (pattern.alike()) {
            finding = id.isEmpty()
                    ? Finding.note(Step.MATCH, "match.keptDenseSame")
                    : Finding.note(Step.MATCH, "match.keptSame", name);
        } else if (id.isEmpty()) {
            finding = Finding.note(Step.MATCH, "match.keptDense", change, low, high);
        } else {
            finding = Finding.note(Step.MATCH, "match.keptWorse", name, change, low, high);
        }
        findings.add(finding.from("source.landingModel"));
    }
}
