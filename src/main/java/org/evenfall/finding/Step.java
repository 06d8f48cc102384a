package org.evenfall.finding;

/** The steps of the job in their fixed order. */
public enum Step {
    START(0),
    PRODUCT(1),
    MATCH(2),
    MACHINE(3),
    HEIGHT(4),
    RATE(5),
    TRAYS(6),
    CARD(7);

    private final int number;

    Step(int number) {
        this.number = number;
    }

    /** As people count the steps. */
    public int number() {
        return number;
    }
}
