package org.evenfall.wizard.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.effect.DropShadow;
import javafx.scene.layout.BorderStroke;
import javafx.scene.paint.Color;

/** Controls whose ring, while they have the keyboard, has less contrast than 3:1 (WCAG 2.2, 1.4.11) or is thinner than 2 px. */
public final class FocusRings {

    private static final double LEAST = 3;
    private static final double LEAST_PX = 2;

    private FocusRings() {}

    /** A ring: its colour and how thick it is. */
    private record Ring(Color colour, double px) {}

    /** Names of the controls; each has the keyboard for a moment. */
    public static List<String> in(Node root) {
        List<String> found = new ArrayList<>();
        for (Node node : Shown.nodes(root)) {
            if (node instanceof Control control && control.isFocusTraversable() && !control.isDisabled()) {
                control.requestFocus();
                control.applyCss();
                String fault = fault(control);
                if (!fault.isEmpty()) {
                    found.add(Shown.name(control) + " " + fault);
                }
            }
        }
        return found;
    }

    private static String fault(Control control) {
        Color ground = Colours.behind(control);
        List<Ring> rings = rings(control);
        double px = rings.stream()
                .filter(ring -> Colours.contrast(Colours.over(ring.colour(), ground), ground) >= LEAST)
                .mapToDouble(Ring::px)
                .sum();
        return px >= LEAST_PX
                ? ""
                : String.format(Locale.ROOT, "has a focus ring of %.1f px on %s: %s", px, Colours.name(ground), rings);
    }

    private static List<Ring> rings(Control control) {
        List<Ring> rings = new ArrayList<>();
        if (control.getEffect() instanceof DropShadow shadow) {
            rings.add(new Ring(shadow.getColor(), shadow.getRadius() * shadow.getSpread()));
        }
        if (control.getBorder() != null) {
            for (BorderStroke stroke : control.getBorder().getStrokes()) {
                rings.add(new Ring(
                        Colours.colour(stroke.getTopStroke()),
                        stroke.getWidths().getTop()));
            }
        }
        return rings;
    }
}
