package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.Contrast;
import org.evenfall.trays.RegionContrasts;
import org.evenfall.wizard.form.FigureRow;

/** Which part of the width gets more than another, as far as that is beyond its noise. */
final class ContrastFigures {

    private ContrastFigures() {}

    /** The differences beyond their noise. */
    static List<FigureRow.Figure> of(Sentences words, RegionContrasts contrasts) {
        List<FigureRow.Figure> figures = new ArrayList<>();
        add(figures, words, "trays.figure.sides", contrasts.leftRight(), "trays.leftMore", "trays.rightMore");
        add(figures, words, "trays.figure.centre", contrasts.centreOverlap(), "trays.centreMore", "trays.overlapMore");
        add(figures, words, "trays.figure.quarter", contrasts.quarterPoint(), "trays.quarterMore", "trays.quarterLess");
        return figures;
    }

    private static void add(
            List<FigureRow.Figure> figures,
            Sentences words,
            String nameKey,
            Contrast contrast,
            String moreKey,
            String lessKey) {
        if (contrast.significant()) {
            figures.add(new FigureRow.Figure(
                    words.text(nameKey),
                    words.text(
                            contrast.percent() > 0 ? moreKey : lessKey,
                            Arg.number(Math.abs(contrast.percent()), 0, Unit.PERCENT))));
        }
    }

    /** That no difference is beyond its noise; empty where one is. */
    static String none(Sentences words, RegionContrasts contrasts) {
        return contrasts.anySignificant() ? "" : words.text("trays.noContrast");
    }
}
