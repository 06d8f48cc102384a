package org.evenfall.wizard.form;

import javafx.geometry.Bounds;
import javafx.scene.layout.Region;
import javafx.scene.shape.Shape;

/** The shape of a state or finding, as large as the text next to it: the style sheet gives the box its size. */
public final class SizedMark extends Region {

    /** Width of the box for which shapes are made, px. */
    private static final double MADE_FOR_PX = 13;

    private final Shape shape;

    /** @param shape about 12 px wide */
    public SizedMark(Shape shape) {
        this.shape = shape;
        getStyleClass().add("mark-box");
        getChildren().add(shape);
    }

    @Override
    protected void layoutChildren() {
        double scale = getWidth() / MADE_FOR_PX;
        Bounds made = shape.getLayoutBounds();
        shape.setScaleX(scale);
        shape.setScaleY(scale);
        shape.relocate(getWidth() / 2 - made.getWidth() / 2, getHeight() / 2 - made.getHeight() / 2);
    }
}
