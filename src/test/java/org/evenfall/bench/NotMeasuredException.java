package org.evenfall.bench;

/** Something cannot be measured on this computer. */
public final class NotMeasuredException extends Exception {

    /** @param reason why not, a few words */
    public NotMeasuredException(String reason) {
        super(reason);
    }
}
