package org.evenfall.wizard.form;

import javafx.geometry.Orientation;
import javafx.scene.layout.Pane;

/** Two lists of lines next to each other, or one below the other where their labels would have no room. */
final class TwoLists extends Pane {

    private static final double GAP_EM = 1.5;
    private static final double BELOW_EM = 0.3;

    private final LineList left;
    private final LineList right;

    TwoLists(LineList left, LineList right) {
        this.left = left;
        this.right = right;
        getChildren().setAll(left, right);
    }

    private double half(double width) {
        return (width - GAP_EM * left.em()) / 2;
    }

    private boolean stacked(double width) {
        return half(width) < Math.max(left.leastWidth(), right.leastWidth());
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return Math.max(left.leastWidth(), right.leastWidth());
    }

    @Override
    protected double computePrefWidth(double height) {
        return 2 * Math.max(left.leastWidth(), right.leastWidth()) + GAP_EM * left.em();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        double wide = width < 0 ? computePrefWidth(-1) : width;
        return stacked(wide)
                ? left.prefHeight(wide) + BELOW_EM * left.em() + right.prefHeight(wide)
                : Math.max(left.prefHeight(half(wide)), right.prefHeight(half(wide)));
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        if (stacked(width)) {
            double high = left.prefHeight(width);
            left.resizeRelocate(0, 0, width, high);
            right.resizeRelocate(0, high + BELOW_EM * left.em(), width, right.prefHeight(width));
        } else {
            double half = half(width);
            left.resizeRelocate(0, 0, half, left.prefHeight(half));
            right.resizeRelocate(width - half, 0, half, right.prefHeight(half));
        }
    }
}
