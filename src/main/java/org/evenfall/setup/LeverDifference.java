package org.evenfall.setup;

import java.util.List;
import java.util.Optional;
import org.evenfall.finding.Arg;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.LeverSettings;
import org.jspecify.annotations.Nullable;

/**
 * A lever that is set otherwise than in a test.
 *
 * @param label the lever
 * @param then its setting in the test; null where not stated
 * @param now its setting now; null where not known
 */
record LeverDifference(
        String label, @Nullable Double then, @Nullable Double now) {

    /** The first lever that differs. */
    static Optional<LeverDifference> first(List<Lever> levers, ReadSettings then, ReadSettings now) {
        return levers.stream()
                .filter(lever -> !LeverSettings.same(List.of(lever), then.levers(), now.levers()))
                .map(lever -> new LeverDifference(
                        lever.label(),
                        then.levers().get(lever.label()),
                        now.levers().get(lever.label())))
                .findFirst();
    }

    /** As a difference between conditions. */
    ConditionDifference at(String pointer) {
        return new ConditionDifference(ConditionKind.LEVERS, setting(then), setting(now), pointer);
    }

    private Arg setting(@Nullable Double value) {
        return value == null
                ? Arg.text(label)
                : new Arg.Series(List.of(Arg.text(label), Arg.number(value, 1, Unit.NONE)));
    }
}
