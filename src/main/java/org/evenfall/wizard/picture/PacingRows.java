package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;

/**
 * How far to pace from the centre tramline to each tray: one row a tray and side, the nearest first.
 *
 * @param brush draws
 * @param words words
 * @param across metres from the centre tramline
 * @param placesM places of the trays, m, negative left
 */
record PacingRows(Brush brush, Sentences words, Scale across, List<Double> placesM) {

    /** A tray this near the centre tramline is not paced, m. */
    private static final double CENTRE_M = 0.05;

    /** Height of one row, em. */
    static final double ROW_EM = 1.2;

    /** Copies the list. */
    PacingRows {
        placesM = List.copyOf(placesM);
    }

    /** Distances to one side, the nearest first, m; side -1 is left. */
    static List<Double> distancesM(List<Double> placesM, int side) {
        return placesM.stream()
                .map(place -> side * place)
                .filter(distance -> distance > CENTRE_M)
                .sorted()
                .toList();
    }

    /** How many rows show every tray. */
    int rows() {
        return Math.max(distancesM(placesM, -1).size(), distancesM(placesM, 1).size());
    }

    /** Draws so many rows at most from a height down, with a thin line from each tray to its row. */
    void draw(double trays, double top, int most) {
        for (int side : new int[] {-1, 1}) {
            List<Double> distances = distancesM(placesM, side);
            int shown = Math.min(most, distances.size());
            for (int k = 0; k < shown; k++) {
                int tray = tray(k, shown, distances.size());
                double x = across.at(side * distances.get(tray));
                brush.line(x, trays, x, y(top, k), brush.palette().line(), 1);
            }
        }
        for (int side : new int[] {-1, 1}) {
            List<Double> distances = distancesM(placesM, side);
            int shown = Math.min(most, distances.size());
            for (int k = 0; k < shown; k++) {
                row(side, distances.get(tray(k, shown, distances.size())), y(top, k));
            }
        }
    }

    /** The nearest, the outermost and as many between as have room. */
    private static int tray(int row, int shown, int trays) {
        return shown < 2 ? 0 : Math.round((float) row * (trays - 1) / (shown - 1));
    }

    private double y(double top, int row) {
        return top + (row + 0.5) * ROW_EM * brush.em();
    }

    private String distance(double metres) {
        return words.number(metres, TrayPlaces.decimals(metres), Unit.M);
    }

    private void row(int side, double distanceM, double y) {
        double x = across.at(side * distanceM);
        new Marks(brush).across(across.at(0), x, y, brush.palette().ink());
        brush.onPaper(
                distance(distanceM),
                x + side * 0.5 * brush.em(),
                y,
                brush.note().in(brush.palette().ink()),
                side < 0 ? TextAlignment.RIGHT : TextAlignment.LEFT,
                across.start(),
                across.end());
    }
}
