package org.evenfall.bench;

/** One line of the table: something of the program against a bare baseline. */
public interface Row {

    /** What is measured. */
    String measured();

    /** What it is held against. */
    String baseline();

    /**
     * Measures both in turns.
     *
     * @throws NotMeasuredException where it cannot be measured here
     */
    Pairs measure() throws Exception;
}
