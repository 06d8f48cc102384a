package org.evenfall.machine;

/** The items of the machine check, in the order of a walk round the machine. */
public enum CheckItem {
    GUARDS,
    VANES_SAME_SET,
    DISCS,
    BEARINGS,
    AGITATOR,
    SHUTTERS_EQUAL,
    SHUTTERS_CLOSE,
    LEVEL,
    TILT,
    TYRES
}
