package org.evenfall.trays.ground;

import java.util.Set;
import org.evenfall.trays.AdviceKind;

/** What may be wrong apart from the levers, always on the left. */
enum Fault {
    NONE(0, 0, 1, 0, 1, Set.of(AdviceKind.KEEP)),
    WORN_BADLY(0.14, 0, 1, 0, 1, Set.of(AdviceKind.OUTLETS_AND_VANES)),
    WORN_SLIGHTLY(0.05, 0, 1, 0, 1, Set.of(AdviceKind.OUTLETS_AND_VANES)),
    ROLLED(0, 3, 1, 0, 1, Set.of(AdviceKind.LEVEL_HEIGHT_TYRES)),
    OUTLET_8(0, 0, 0.92, 0, 1, Set.of(AdviceKind.OUTLETS_AND_VANES)),
    OUTLET_25(0, 0, 0.75, 0, 1, Set.of(AdviceKind.OUTLETS_AND_VANES)),
    WIND_3_5(0, 0, 1, 3.5, 1, Set.of(AdviceKind.WAIT_FOR_WIND, AdviceKind.REPEAT_TEST)),
    WIND_5(0, 0, 1, 5, 1, Set.of(AdviceKind.WAIT_FOR_WIND)),
    TRAY_HALVED(0, 0, 1, 0, 0.5, Set.of(AdviceKind.REPEAT_TEST)),
    TRAY_ZERO(0, 0, 1, 0, 0, Set.of(AdviceKind.REPEAT_TEST)),
    /** The side wind of the passes that drive the other way, as these see it. */
    WIND_3_5_BACK(0, 0, 1, -3.5, 1, Set.of()),
    WIND_5_BACK(0, 0, 1, -5, 1, Set.of());

    private final double wornShare;
    private final double rollDeg;
    private final double leftOutlet;
    private final double windMPerS;
    private final double spoiltTray;
    private final Set<AdviceKind> cures;

    Fault(
            double wornShare,
            double rollDeg,
            double leftOutlet,
            double windMPerS,
            double spoiltTray,
            Set<AdviceKind> cures) {
        this.wornShare = wornShare;
        this.rollDeg = rollDeg;
        this.leftOutlet = leftOutlet;
        this.windMPerS = windMPerS;
        this.spoiltTray = spoiltTray;
        this.cures = cures;
    }

    /** Share by which the long vane of the left disc is worn shorter. */
    double wornShare() {
        return wornShare;
    }

    /** Roll of the frame, degrees, the right side up. */
    double rollDeg() {
        return rollDeg;
    }

    /** What the left outlet gives against the right one. */
    double leftOutlet() {
        return leftOutlet;
    }

    /** Wind to the right of the machine, m/s. */
    double windMPerS() {
        return windMPerS;
    }

    /** What is read in one tray against what fell in. */
    double spoiltTray() {
        return spoiltTray;
    }

    /** The right first advice where the fault is known. */
    Set<AdviceKind> cures() {
        return cures;
    }

    /** The fault as a pass the other way sees it: the wind comes from its other side. */
    Fault turned() {
        return switch (this) {
            case WIND_3_5 -> WIND_3_5_BACK;
            case WIND_5 -> WIND_5_BACK;
            default -> this;
        };
    }
}
