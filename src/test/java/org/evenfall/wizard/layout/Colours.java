package org.evenfall.wizard.layout;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;

/** Colours as they are seen, and their contrast by WCAG 2.2 (W3C, 2023, definitions of contrast ratio and relative luminance). */
final class Colours {

    private static final double OPAQUE = 0.995;

    private Colours() {}

    /** Contrast ratio, 1 to 21. */
    static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double share) {
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** What lies behind a node: the nearest opaque background around it, with what is half transparent before it. */
    static Color behind(Node node) {
        List<Color> veils = new ArrayList<>();
        for (Node up = node.getParent(); up != null; up = up.getParent()) {
            if (up instanceof Region region && region.getBackground() != null) {
                List<BackgroundFill> fills = region.getBackground().getFills();
                for (int i = fills.size() - 1; i >= 0; i--) {
                    Color fill = colour(fills.get(i).getFill());
                    if (fill.getOpacity() >= OPAQUE) {
                        return through(veils, fill);
                    }
                    veils.add(fill);
                }
            }
        }
        return through(veils, colour(node.getScene().getFill()));
    }

    private static Color through(List<Color> veils, Color last) {
        Color seen = last;
        for (int i = veils.size() - 1; i >= 0; i--) {
            seen = over(veils.get(i), seen);
        }
        return seen;
    }

    /** A colour, half transparent or not, on an opaque one. */
    static Color over(Color colour, Color ground) {
        return ground.interpolate(
                Color.color(colour.getRed(), colour.getGreen(), colour.getBlue()), colour.getOpacity());
    }

    /** A paint's colour; of a gradient the first. */
    static Color colour(Paint paint) {
        if (paint instanceof Color colour) {
            return colour;
        }
        if (paint instanceof LinearGradient gradient) {
            return gradient.getStops().get(0).getColor();
        }
        throw new IllegalArgumentException("no colour: " + paint);
    }

    /** As in a style sheet. */
    static String name(Color colour) {
        return String.format(
                "#%02X%02X%02X",
                Math.round(colour.getRed() * 255),
                Math.round(colour.getGreen() * 255),
                Math.round(colour.getBlue() * 255));
    }
}
