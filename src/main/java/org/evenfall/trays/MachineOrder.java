package org.evenfall.trays;

/**
 * What of the machine was measured and is within limits; not measured counts as not in order.
 *
 * @param level level, height and tyres
 * @param pto shaft speed
 * @param outlets both outlets give the same in the bucket and the vanes passed
 */
public record MachineOrder(boolean level, boolean pto, boolean outlets) {

    /** Whether all is in order. */
    public boolean all() {
        return level && pto && outlets;
    }
}
