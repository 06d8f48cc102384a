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

/** Findings where they belong: marks on the entries, and lines below a group that they are about as a whole. */
final class PlaceFindings {

    /** Style of a box of lines about one place, whose pointer is its user data. */
    static final String STYLE = "place-findings";

    private PlaceFindings() {}

    /** Lines about exactly this place. */
    static VBox of(Form form, String pointer) {
        VBox box = new VBox();
        box.getStyleClass().addAll("told", STYLE);
        box.setUserData(pointer);
        return Lines.collapsing(
                form,
                box,
                () -> visible(form).stream()
                        .filter(finding -> finding.field().equals(pointer))
                        .toList(),
                finding -> FindingView.line(form.words(), finding));
    }

    /**
     * Marks each entry by the worst finding about it, by the pseudo-class of its kind, and gives it its name.
     *
     * @param cells the entries, a live list; the id of each is its pointer
     * @param cellName what the entry of a pointer is called in a sentence; may be empty
     */
    static void mark(Form form, List<? extends Node> cells, Function<String, String> cellName) {
        form.follow(() -> {
            List<Finding> findings = visible(form);
            for (Node cell : cells) {
                if (cell.getId() == null || !cell.getId().startsWith("/")) {
                    continue;
                }
                cell.getProperties().put(FocusedFindings.CELL_NAME, cellName.apply(cell.getId()));
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

    /**
     * What is missing is named at the foot of the window, not at each empty entry. The first page, where nothing can be wrong
     * yet, does not wait for the first assessment.
     */
    private static List<Finding> visible(Form form) {
        if (!form.model().isAssessed()) {
            return List.of();
        }
        return form.model().assessment().findings().stream()
                .filter(finding -> finding.kind() != FindingKind.MISSING)
                .toList();
    }
}
