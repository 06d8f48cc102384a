package org.evenfall.trays.ground;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceInput.DoneTest;
import org.evenfall.trays.AdviceKind;

/**
 * Obeys the advice: moves what it says, keeps when it says so, and in all other cases repeats the test once and then gives
 * up. Asked to confirm a direction, it looks and answers with the truth.
 */
final class AdviceRule implements Rule {

    private final Site site;
    private final boolean twoLevers;
    private List<Lever> typed;
    private final List<AdviceKind> kinds = new ArrayList<>();

    /** @param typed the levers as the owner typed them */
    AdviceRule(Site site, boolean twoLevers, List<Lever> typed) {
        this.site = site;
        this.twoLevers = twoLevers;
        this.typed = typed;
    }

    @Override
    public Decision next(List<DoneTest> tests) {
        Advice advice = ask(tests);
        if (advice.kind() == AdviceKind.CONFIRM_DIRECTION && advice.moves().isEmpty() && !typed.equals(site.levers())) {
            typed = site.levers();
            advice = ask(tests);
        }
        Map<String, Double> now = tests.get(tests.size() - 1).settings();
        if (!advice.moves().isEmpty()) {
            Map<String, Double> next = new LinkedHashMap<>(now);
            advice.moves().forEach(move -> next.put(move.lever(), move.to()));
            return new Decision(Decision.Kind.TEST, next, advice.expected(), 0);
        }
        if (advice.kind() == AdviceKind.KEEP) {
            return Decision.KEEP;
        }
        return Rule.repeated(tests)
                ? Decision.STOP
                : new Decision(Decision.Kind.TEST, now, null, Extras.whole(advice, "moreRuns"));
    }

    private Advice ask(List<DoneTest> tests) {
        Advice advice = Asking.advice(site, tests, typed, twoLevers, Asking.IN_ORDER);
        kinds.add(advice.kind());
        return advice;
    }

    /** Kinds of all advice so far. */
    List<AdviceKind> kinds() {
        return kinds;
    }
}
