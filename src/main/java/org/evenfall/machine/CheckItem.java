package org.evenfall.machine;

/** The items of the machine check, in the order of a walk round the machine. */
public enum CheckItem {
    /** Guards in place. */
    GUARDS,
    /** All vanes of one set. */
    VANES_SAME_SET,
    /** Discs clean and straight. */
    DISCS,
    /** Bearings without play. */
    BEARINGS,
    /** Agitator. */
    AGITATOR,
    /** Shutters equal left and right. */
    SHUTTERS_EQUAL,
    /** Shutters close fully. */
    SHUTTERS_CLOSE,
    /** Frame level. */
    LEVEL,
    /** Tilt as wanted. */
    TILT,
    /** Tyres equal. */
    TYRES
}
