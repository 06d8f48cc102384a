package org.evenfall.fuzz;

import java.util.Map;
import java.util.TreeMap;

/**
 * What any bytes are given to. A target refuses them in the way of its reader or gives a result; everything else that it
 * throws is a fault of the program.
 */
public final class Targets {

    /** Takes one input. */
    @FunctionalInterface
    public interface Target {
        /** @throws Exception when the program has a fault that this input shows */
        void take(byte[] input) throws Exception;
    }

    /** Every target by its name, which is also the name of its folder of inputs. */
    public static final Map<String, Target> ALL = new TreeMap<>(Map.of(
            "setup", SetupTarget::take,
            "stream", StreamTarget::take,
            "library", TableTargets::library,
            "line", TableTargets::line,
            "keys", KeysTarget::take,
            "verify", VerifyTarget::take));

    private Targets() {}

    /** A program's fault, found by a target. */
    static void require(boolean holds, String what) {
        if (!holds) {
            throw new AssertionError(what);
        }
    }
}
