package org.evenfall.sheet;

/** Which sheets are wanted. */
public enum SheetPart {
    /** What is measured in the yard. */
    YARD,
    /** What is measured in the field. */
    FIELD,
    /** Both. */
    ALL
}
