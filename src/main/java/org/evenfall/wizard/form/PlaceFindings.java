package org.evenfall.wizard.form;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;

/** Findings where they belong: below the entry, the list or the table they are about, and on its cells. */
final class PlaceFindings {

    /** Below a table at most so many lines; every cell concerned is marked all the same. */
    private static final int MOST_LINES = 6;

    private PlaceFindings() {}

    /** Findings about exactly this entry. */
    static VBox of(Form form, String pointer) {
        return box(
                form,
                Integer.MAX_VALUE,
                finding -> finding.field().equals(pointer) ? Optional.of("") : Optional.empty());
    }

    /**
     * Findings about a list or anything in it.
     *
     * @param cellName what the cell of a pointer is called, empty when the finding is not about a cell
     */
    static VBox within(Form form, String pointer, Function<String, String> cellName) {
        return box(
                form,
                MOST_LINES,
                finding -> finding.field().equals(pointer) || finding.field().startsWith(pointer + "/")
                        ? Optional.of(cellName.apply(finding.field()))
                        : Optional.empty());
    }

    private static VBox box(Form form, int most, Function<Finding, Optional<String>> place) {
        VBox box = new VBox();
        box.getStyleClass().add("told");
        return Lines.collapsing(
                form,
                box,
                () -> visible(form).stream()
                        .flatMap(finding -> place.apply(finding).map(name -> new Line(name, finding)).stream())
                        .limit(most)
                        .toList(),
                line -> FindingView.line(form.words(), line.place(), line.finding()));
    }

    /** A finding with the name of the cell it is about. */
    private record Line(String place, Finding finding) {}

    /** Marks each cell by the worst finding about it, by the pseudo-class of its kind; a cell's id is its pointer. */
    static void mark(Form form, List<? extends Node> cells) {
        form.follow(() -> {
            List<Finding> findings = visible(form);
            for (Node cell : cells) {
                Optional<Finding> worst = findings.stream()
                        .filter(finding -> finding.field().equals(cell.getId()))
                        .min(Comparator.comparingInt(finding -> finding.kind().weight()));
                for (FindingKind kind : FindingKind.values()) {
                    cell.pseudoClassStateChanged(
                            PseudoClass.getPseudoClass(FindingView.styleClass(kind)),
                            worst.isPresent() && worst.get().kind() == kind);
                }
                cell.setAccessibleHelp(worst.map(form.words()::of).orElse(null));
            }
        });
    }

    /** What is missing is named at the foot of the window, not at each empty entry. */
    private static List<Finding> visible(Form form) {
        return form.model().assessment().findings().stream()
                .filter(finding -> finding.kind() != FindingKind.MISSING)
                .toList();
    }
}
