package org.evenfall.store;

/**
 * A setup file that cannot be read, told so that it can be put right.
 */
public final class SetupFileException extends Exception {

    private final String file;
    private final String pointer;
    private final String problem;

    /**
     * @param file name of the file, or of the line of a stream
     * @param pointer JSON pointer of the place, empty for the whole
     * @param problem what is wrong, with the value and what is allowed
     */
    public SetupFileException(String file, String pointer, String problem) {
        super(pointer.isEmpty() ? file + ": " + problem : file + ": " + pointer + ": " + problem);
        this.file = file;
        this.pointer = pointer;
        this.problem = problem;
    }

    public String file() {
        return file;
    }

    public String pointer() {
        return pointer;
    }

    public String problem() {
        return problem;
    }
}
