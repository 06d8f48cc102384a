package org.evenfall.trays.ground;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenfall.machine.Lever;
import org.evenfall.trays.AdviceInput.DoneTest;
import org.evenfall.trays.CvLimits;
import org.evenfall.trays.ShapeKind;
import org.evenfall.trays.SpreadShape;

/** One step of the first lever each time in the diagnosed direction, until the tray CV is good. */
record NaiveRule(Site site) implements Rule {

    @Override
    public int mostTests() {
        return 12;
    }

    @Override
    public Decision next(List<DoneTest> tests) {
        DoneTest last = tests.get(tests.size() - 1);
        if (last.evenness().cvPercent() <= CvLimits.GOOD_PERCENT) {
            return Decision.KEEP;
        }
        Optional<SpreadShape> centre = last.evenness().shapes().shape(ShapeKind.CENTRE_OVERLAP);
        if (centre.isEmpty()) {
            return Decision.STOP;
        }
        Lever lever = site.levers().get(0);
        double now = last.settings().get(lever.label());
        int step = lever.widerSign() * (centre.get().amplitudePercent() > 0 ? 1 : -1);
        Map<String, Double> next = new LinkedHashMap<>(last.settings());
        next.put(lever.label(), lever.moved(now, step));
        return next.equals(last.settings()) ? Decision.STOP : Decision.test(next);
    }
}
