package org.evenfall.machine;

/** The parts looked at in the yard, in the order in which one walks round the machine. */
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
