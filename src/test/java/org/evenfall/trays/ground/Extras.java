package org.evenfall.trays.ground;

/** Reads parts of an advice that this version of it may not have. */
final class Extras {

    private Extras() {}

    /** A part that is a whole number, by its name; 0 where there is none. */
    static int whole(Record record, String part) {
        try {
            Object value = record.getClass().getMethod(part).invoke(record);
            return value instanceof Number number ? number.intValue() : 0;
        } catch (ReflectiveOperationException none) {
            return 0;
        }
    }
}
