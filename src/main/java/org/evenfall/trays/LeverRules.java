package org.evenfall.trays;

import java.util.List;
import org.evenfall.machine.Lever;

/**
 * What may be moved.
 *
 * @param levers levers of the machine, the one to turn first first
 * @param twoAtOnce the owner allows two levers to be moved at once
 */
public record LeverRules(List<Lever> levers, boolean twoAtOnce) {

    /** Copies the list. */
    public LeverRules {
        levers = List.copyOf(levers);
    }
}
