package org.evenfall.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.UnaryOperator;

/** What earlier programs wrote in another way, put into the form of today. */
final class Migrations {

    /** In the order in which the format changed. Each gives a new tree and leaves the one it is given as it is. */
    private static final List<UnaryOperator<ObjectNode>> ALL = List.of(DiscDiameterMigration::apply);

    private Migrations() {}

    /** The tree of a setup file in the form of today. */
    static ObjectNode apply(ObjectNode setup) {
        ObjectNode renewed = setup;
        for (UnaryOperator<ObjectNode> migration : ALL) {
            renewed = migration.apply(renewed);
        }
        return renewed;
    }
}
