package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;

/**
 * Numbers of the trays, counted from the left: from the outer trays inwards where there is room.
 *
 * @param brush draws
 * @param words words
 * @param across metres from the centre tramline
 * @param placesM places of the trays, m, negative left
 */
record TrayNumbers(Brush brush, Sentences words, Scale across, List<Double> placesM) {

    /** Copies the list. */
    TrayNumbers {
        placesM = List.copyOf(placesM);
    }

    /** Draws them at a height. */
    void draw(double y) {
        Lettering lettering = brush.note().in(brush.palette().ink());
        double left = 0;
        double right = across.end();
        for (int i = 0; i <= placesM.size() / 2; i++) {
            int other = placesM.size() - 1 - i;
            double half = brush.width(words.number(other + 1, 0, Unit.NONE), lettering) / 2 + 0.25 * brush.em();
            double x = across.at(placesM.get(i));
            double mirror = across.at(placesM.get(other));
            boolean apart = i == other ? x + half < right : x + half < mirror - half;
            if (i <= other && x - half > left && mirror + half < right && apart) {
                number(i + 1, x, y, lettering);
                if (i != other) {
                    number(other + 1, mirror, y, lettering);
                }
                left = x + half;
                right = mirror - half;
            }
        }
    }

    private void number(int tray, double x, double y, Lettering lettering) {
        String text = words.number(tray, 0, Unit.NONE);
        brush.onPaper(text, x, y, lettering, TextAlignment.CENTER, x - 2 * brush.em(), x + 2 * brush.em());
    }
}
