package org.evenfall.setup;

/** Writes a number as the person would type it; the reader's decimal sign comes in with it. */
@FunctionalInterface
public interface NumberWriter {

    /** The value rounded to so many decimals, without grouping. */
    String write(double value, int decimals);
}
