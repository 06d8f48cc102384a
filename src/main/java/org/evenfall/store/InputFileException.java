package org.evenfall.store;

import org.evenfall.quantity.PlainText;
import org.evenfall.quantity.Quoted;

/** A file that is read and cannot be used: which file, where in it, and what is wrong, so that it can be put right. */
public final class InputFileException extends Exception {

    private final String file;
    private final String place;
    private final String problem;

    /**
     * @param file name of the file, or of the line of a stream
     * @param place JSON pointer, or line and column of a table; empty for the whole file
     * @param problem what is wrong, with the value and what is allowed
     */
    public InputFileException(String file, String place, String problem) {
        super(PlainText.oneLine(
                place.isEmpty() ? file + ": " + problem : file + ": " + place + ": " + problem,
                Quoted.MOST_IN_MESSAGE));
        this.file = file;
        this.place = place;
        this.problem = PlainText.oneLine(problem, Quoted.MOST_IN_MESSAGE);
    }

    /** Name of the file, or of the line of a stream. */
    public String file() {
        return file;
    }

    /** JSON pointer, or line and column of a table; empty for the whole file. */
    public String place() {
        return place;
    }

    /** What is wrong, with the value and what is allowed. */
    public String problem() {
        return problem;
    }
}
