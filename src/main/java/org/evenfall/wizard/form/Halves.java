package org.evenfall.wizard.form;

import javafx.scene.Node;
import javafx.scene.layout.FlowPane;

/** Two parts of a page side by side, half the width each; one under the other where the words in them need more. */
final class Halves extends FlowPane {

    /** So much of its words a half needs on one line, else their lines get too short to read. */
    private static final double LEAST_SHARE = 0.45;

    private final Node left;
    private final Node right;

    /** @param left that and the other can be as narrow as their entries; their words wrap */
    Halves(Node left, Node right) {
        this.left = left;
        this.right = right;
        getStyleClass().add("line-lists");
        getChildren().setAll(left, right);
    }

    private static double need(Node half) {
        double entries = half.minWidth(-1);
        return entries + LEAST_SHARE * Math.max(0, half.prefWidth(-1) - entries);
    }

    private double half(double width) {
        return (width - getHgap()) / 2;
    }

    private boolean fits(double width) {
        return Math.max(need(left), need(right)) <= half(width);
    }

    @Override
    protected double computeMinWidth(double height) {
        return Math.max(left.minWidth(-1), right.minWidth(-1));
    }

    @Override
    protected double computePrefWidth(double height) {
        return 2 * Math.max(left.prefWidth(-1), right.prefWidth(-1)) + getHgap();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        if (width < 0 || fits(width)) {
            double half = width < 0 ? -1 : half(width);
            return Math.max(left.prefHeight(half), right.prefHeight(half));
        }
        return left.prefHeight(width) + getVgap() + right.prefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        if (fits(width)) {
            double half = half(width);
            left.resizeRelocate(0, 0, half, left.prefHeight(half));
            right.resizeRelocate(half + getHgap(), 0, half, right.prefHeight(half));
        } else {
            double high = left.prefHeight(width);
            left.resizeRelocate(0, 0, width, high);
            right.resizeRelocate(0, high + getVgap(), width, right.prefHeight(width));
        }
    }
}
