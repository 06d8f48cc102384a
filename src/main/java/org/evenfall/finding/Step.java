package org.evenfall.finding;

/** The steps of the job in their fixed order. */
public enum Step {
    /** Machine, width, farm and field. */
    START(0),
    /** What is in the bag. */
    PRODUCT(1),
    /** The closest tested product. */
    MATCH(2),
    /** The machine check. */
    MACHINE(3),
    /** Height above the crop canopy. */
    HEIGHT(4),
    /** Rate plan and bucket test. */
    RATE(5),
    /** Tray test. */
    TRAYS(6),
    /** The cab card. */
    CARD(7);

    private final int number;

    Step(int number) {
        this.number = number;
    }

    /** Its number as shown, from 0. */
    public int number() {
        return number;
    }
}
