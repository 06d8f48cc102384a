package org.evenfall.setup;

/**
 * A condition under which a measurement was made. How far each may have changed before the measurement proves nothing is in
 * {@link ConditionRules}; why is in the sentence {@code trays.differs.NAME} or {@code rate.differs.NAME}. Whose limit that is
 * is its source.
 */
public enum ConditionKind {
    /** Distance between tramlines. */
    TRAMLINE_WIDTH("source.conditions"),
    /** How the passes follow each other. */
    DRIVING_PATTERN(""),
    /** The product, by its name. */
    PRODUCT(""),
    /** The delivery, where it was not measured again and found alike. */
    DELIVERY("source.deliveries"),
    /** Bulk density of the product. */
    DENSITY("source.deliveries"),
    /** A part of the machine, worn or replaced after the test. */
    MACHINE_PART(""),
    /** Settings of the levers. */
    LEVERS("source.conditions"),
    /** The opening, or the factor of a terminal. */
    OPENING("source.flowChange"),
    /** PTO speed. */
    PTO_SPEED("source.pto"),
    /** Product rate. */
    RATE("source.conditions"),
    /** Forward speed. */
    SPEED("source.conditions"),
    /** Height over the place where the granules land. */
    HEIGHT("source.conditions"),
    /** Wind during the test. */
    WIND("source.wind");

    private final String source;

    ConditionKind(String source) {
        this.source = source;
    }

    /** Bundle key of the source of its limit; empty where any difference counts. */
    public String source() {
        return source;
    }
}
