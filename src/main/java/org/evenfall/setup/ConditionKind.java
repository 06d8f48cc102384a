package org.evenfall.setup;

/**
 * A condition under which a measurement was made. How far each may have changed before the measurement proves nothing is in
 * {@link ConditionRules}; why is in the sentence {@code trays.differs.NAME} or {@code rate.differs.NAME}.
 */
public enum ConditionKind {
    /** Distance between tramlines. */
    TRAMLINE_WIDTH,
    /** How the passes follow each other. */
    DRIVING_PATTERN,
    /** The product, by its name. */
    PRODUCT,
    /** The delivery, where it was not measured again and found alike. */
    DELIVERY,
    /** Bulk density of the product. */
    DENSITY,
    /** Settings of the levers. */
    LEVERS,
    /** The opening, or the factor of a terminal. */
    OPENING,
    /** PTO speed. */
    PTO_SPEED,
    /** Product rate. */
    RATE,
    /** Forward speed. */
    SPEED,
    /** Height over the place where the granules land. */
    HEIGHT,
    /** Wind during the test. */
    WIND
}
