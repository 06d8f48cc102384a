package org.evenfall.quantity;

/** A value as a message quotes it. */
public final class Quoted {

    /** Most letters of a value that a message quotes. */
    public static final int MOST_LETTERS = 80;

    /** Most letters of a message on one line: a file name, a place and a sentence. */
    public static final int MOST_IN_MESSAGE = 600;

    private Quoted() {}

    /** The value in quotation marks, on one line, cut where it is long. */
    public static String of(String value) {
        return '"' + PlainText.oneLine(value, MOST_LETTERS) + '"';
    }
}
