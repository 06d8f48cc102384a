package org.evenfall.wizard.form;

import javafx.scene.layout.Region;

/** Scrolls a table that is wider than its place from side to side, so that the page need not; never up and down. */
public final class HorizontalScrollPane extends PlainScrollPane {

    /** Room for the bar below the last row, px. */
    private static final double BAR = 14;

    private final Region table;

    /** @param table what is scrolled */
    public HorizontalScrollPane(Region table) {
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
