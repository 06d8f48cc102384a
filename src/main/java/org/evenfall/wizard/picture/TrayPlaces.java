package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;

/**
 * Metres under each tray, from the middle outwards, as many as have room.
 *
 * @param brush draws
 * @param words words
 * @param placesM places of the trays, m, negative left, at least one
 */
record TrayPlaces(Brush brush, Sentences words, List<Double> placesM) {

    /** Copies the list. */
    TrayPlaces {
        placesM = List.copyOf(placesM);
    }

    /** Draws them under a floor. */
    void draw(double floor, Scale across) {
        int middle = placesM.size() / 2;
        double half = half(placesM.get(middle));
        double centre = across.at(placesM.get(middle));
        place(floor, placesM.get(middle), centre);
        double free = centre - half;
        for (int i = middle - 1; i >= 0; i--) {
            double x = across.at(placesM.get(i));
            if (x + half(placesM.get(i)) < free) {
                place(floor, placesM.get(i), x);
                free = x - half(placesM.get(i));
            }
        }
        free = centre + half;
        for (int i = middle + 1; i < placesM.size(); i++) {
            double x = across.at(placesM.get(i));
            if (x - half(placesM.get(i)) > free) {
                place(floor, placesM.get(i), x);
                free = x + half(placesM.get(i));
            }
        }
    }

    /** The name of the axis under them, short where the whole has no room. */
    void axis(double floor, double width, String whole, String brief) {
        double edge = 0.3 * brush.em();
        brush.within(
                brush.width(whole, brush.note()) < width - 2 * edge ? whole : brief,
                width / 2,
                floor + 2.1 * brush.em(),
                brush.note(),
                TextAlignment.CENTER,
                edge,
                width - edge);
    }

    private void place(double floor, double metres, double x) {
        brush.text(text(metres), x, floor + 0.9 * brush.em(), brush.note(), TextAlignment.CENTER);
    }

    private double half(double metres) {
        return brush.width(text(metres), brush.note()) / 2 + 0.2 * brush.em();
    }

    private String text(double metres) {
        return words.number(metres, decimals(metres), Unit.NONE);
    }

    /** Whole metres without a decimal. */
    static int decimals(double metres) {
        return Math.abs(metres - Math.rint(metres)) < 0.05 ? 0 : 1;
    }
}
