package org.evenfall.wizard.picture;

import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;

/** A picture drawn anew for its size. Colours and sizes of text come from the style sheet by style class. */
public abstract class Picture extends Region {

    /** Where a text stands against its point. */
    protected enum At {
        LEFT,
        MIDDLE,
        RIGHT
    }

    private double em = 15;

    protected Picture() {
        getStyleClass().add("picture");
        setMinSize(200, 140);
    }

    /** Asks for a new drawing after what it shows has changed. */
    protected final void changed() {
        requestLayout();
    }

    /** Height of a line of text of the common size, in pixels; pictures space by it. */
    protected final double em() {
        return em;
    }

    @Override
    protected final void layoutChildren() {
        getChildren().clear();
        Text probe = new Text("0");
        probe.getStyleClass().add("p-text");
        getChildren().add(probe);
        probe.applyCss();
        em = probe.getFont().getSize();
        getChildren().clear();
        if (getWidth() > 40 && getHeight() > 40) {
            draw(getWidth(), getHeight());
        }
    }

    protected abstract void draw(double width, double height);

    private <N extends Node> N add(N node, String style) {
        node.getStyleClass().addAll(style.split(" ", -1));
        node.setManaged(false);
        getChildren().add(node);
        return node;
    }

    protected final Line line(double x1, double y1, double x2, double y2, String style) {
        return add(new Line(x1, y1, x2, y2), style);
    }

    protected final Rectangle box(double x, double y, double width, double height, String style) {
        return add(new Rectangle(x, y, Math.max(0, width), Math.max(0, height)), style);
    }

    protected final void dot(double x, double y, double radius, String style) {
        add(new Circle(x, y, radius), style);
    }

    protected final void polygon(String style, double... points) {
        add(new Polygon(points), style);
    }

    protected final void curve(String style, double... points) {
        add(new Polyline(points), style);
    }

    /** An arrow from one point to another. */
    protected final void arrow(double x1, double y1, double x2, double y2, String style) {
        line(x1, y1, x2, y2, style);
        double angle = Math.atan2(y2 - y1, x2 - x1);
        double size = 0.55 * em;
        for (double turn : new double[] {2.6, -2.6}) {
            line(x2, y2, x2 + size * Math.cos(angle + turn), y2 + size * Math.sin(angle + turn), style);
        }
    }

    /** Writes one line with its middle height at y; returns its width. */
    protected final double text(double x, double y, At at, String style, String words) {
        Text text = add(new Text(words), "p-text " + style);
        text.setTextOrigin(VPos.CENTER);
        text.applyCss();
        double width = text.getLayoutBounds().getWidth();
        text.setX(
                switch (at) {
                    case LEFT -> x;
                    case MIDDLE -> x - width / 2;
                    case RIGHT -> x - width;
                });
        text.setY(y);
        return width;
    }

    /** Writes wrapped lines from a top edge; returns the bottom. */
    protected final double paragraph(double x, double top, double width, String style, String words) {
        Text text = add(new Text(words), "p-text " + style);
        text.setTextOrigin(VPos.TOP);
        text.setWrappingWidth(width);
        text.applyCss();
        text.setX(x);
        text.setY(top);
        return top + text.getLayoutBounds().getHeight();
    }
}
