package org.evenfall.card;

import java.util.List;
import org.evenfall.setup.entry.Paper;

/**
 * Everything that is printed, already as words and figures with their units, in reading order.
 *
 * @param paper sheet
 * @param language ISO code of the language it is written in
 * @param title what this sheet is, the product's name first
 * @param lines lines under the title: how to know the product, and the job
 * @param figures what the driver sets, in the order in which it is set
 * @param proofTitle heading of the proof
 * @param bars each tray, % of the mean, left to right; empty without a tray test
 * @param barsTold the same in words, for a screen reader
 * @param proof lines of proof: CV with its interval, bucket weight with its band, bag
 * @param warnings open warnings and overrides
 * @param stopTitle heading of the stop list
 * @param stops when to stop and measure again
 * @param cautionTitle heading of the cautions
 * @param cautions cautions
 * @param signature who measured, who signs, when, revision, key
 * @param timeLabel word before the time of signing
 * @param penLabels boxes for the pen
 * @param footer one line at the foot
 * @param qr settings as plain text lines; empty for none
 * @param qrTold what the code holds, for a screen reader
 * @param findingOnly not a card: a one-page finding
 */
public record CardContent(
        Paper paper,
        String language,
        String title,
        List<String> lines,
        List<Figure> figures,
        String proofTitle,
        List<Double> bars,
        String barsTold,
        List<String> proof,
        List<String> warnings,
        String stopTitle,
        List<String> stops,
        String cautionTitle,
        List<String> cautions,
        List<String> signature,
        String timeLabel,
        List<String> penLabels,
        String footer,
        String qr,
        String qrTold,
        boolean findingOnly) {

    /**
     * One big figure.
     *
     * @param label what it is
     * @param value the figure with its unit
     */
    public record Figure(String label, String value) {}

    public CardContent {
        lines = List.copyOf(lines);
        figures = List.copyOf(figures);
        bars = List.copyOf(bars);
        proof = List.copyOf(proof);
        warnings = List.copyOf(warnings);
        stops = List.copyOf(stops);
        cautions = List.copyOf(cautions);
        signature = List.copyOf(signature);
        penLabels = List.copyOf(penLabels);
    }
}
