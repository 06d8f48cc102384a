package org.evenfall.wizard.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.TextInputControl;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** Text with too little contrast (WCAG 2.2, 1.4.3): 4.5:1, large text 3:1. What is disabled is left out, as there. */
public final class Contrast {

    private static final double LEAST = 4.5;
    private static final double LEAST_LARGE = 3;
    private static final double LARGE_PX = 24;
    private static final double LARGE_BOLD_PX = 18.66;

    private Contrast() {}

    /** Names of the controls with the contrast of their text. */
    public static List<String> in(Node root) {
        List<String> found = new ArrayList<>();
        for (Node node : Shown.nodes(root)) {
            if (node instanceof Text text && isRead(text)) {
                Color ground = Colours.behind(text);
                Color drawn = Colours.over(faded(text), ground);
                double contrast = Colours.contrast(drawn, ground);
                if (contrast < (large(text.getFont()) ? LEAST_LARGE : LEAST)) {
                    found.add(String.format(
                            Locale.ROOT,
                            "%s has %.2f:1, %s on %s",
                            Shown.name(Shown.control(text)),
                            contrast,
                            Colours.name(drawn),
                            Colours.name(ground)));
                }
            }
        }
        return found;
    }

    /** A text, or the place of a text that will be typed. */
    private static boolean isRead(Text text) {
        if (text.isDisabled()) {
            return false;
        }
        return !text.getText().isBlank() || Shown.control(text) instanceof TextInputControl;
    }

    private static Color faded(Text text) {
        Color fill = Colours.colour(text.getFill());
        double opacity = fill.getOpacity();
        for (Node up = text; up != null; up = up.getParent()) {
            opacity *= up.getOpacity();
        }
        return Color.color(fill.getRed(), fill.getGreen(), fill.getBlue(), opacity);
    }

    private static boolean large(Font font) {
        return font.getSize() >= LARGE_PX
                || (font.getStyle().toLowerCase(Locale.ROOT).contains("bold") && font.getSize() >= LARGE_BOLD_PX);
    }
}
