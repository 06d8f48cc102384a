package org.evenfall.wizard;

import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** A table that is wider than its place is moved sideways by itself, not the whole page with it; never up and down. */
final class HorizontalScrollPane extends ScrollPane {

    /** Room for the bar beneath the last row, px. */
    private static final double BAR = 14;

    private final Region table;

    HorizontalScrollPane(Region table) {
        super(table);
        this.table = table;
        setVbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        getStyleClass().add("sideways");
    }

    @Override
    protected double computePrefHeight(double width) {
        return table.prefHeight(-1) + BAR;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }
}
