package org.evenfall.wizard.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.jspecify.annotations.Nullable;

/**
 * The findings about the entry that has the keyboard, in a place of fixed height, so that nothing moves while somebody
 * types. Other entries only carry a mark.
 */
public final class FocusedFindings extends VBox {

    /** Key of the property of a cell that is its name in a sentence. */
    static final String CELL_NAME = "evenfall.cellName";

    /** So many have room. */
    private static final int MOST = 2;

    private final Supplier<List<Finding>> own;
    private final Sentences words;
    private final List<Finding> shown = new ArrayList<>();
    private List<? extends Node> lines = List.of();
    private List<Finding> otherwise = List.of();
    private String place = "";
    private String sentence = "";
    private @Nullable Node focused;

    /**
     * @param model the setup that is typed
     * @param own the findings about entries of the page in front
     */
    public FocusedFindings(SetupModel model, Sentences words, Supplier<List<Finding>> own) {
        this.own = own;
        this.words = words;
        getStyleClass().addAll("told", "focused-findings");
        model.followLast(this::refresh);
        sceneProperty().flatMap(scene -> scene.focusOwnerProperty()).subscribe(owner -> {
            focused = owner;
            refresh();
        });
    }

    /** What is shown while nothing is found about the entry with the keyboard: the first of these. */
    public void otherwise(List<Finding> findings) {
        otherwise = List.copyOf(findings);
        refresh();
    }

    /** What is shown while nothing is found at all; empty for nothing. */
    public void otherwise(String how) {
        sentence = how;
        draw();
    }

    private void refresh() {
        Node at = focused;
        String pointer = at == null ? "" : pointer(at);
        String name = at == null ? "" : String.valueOf(at.getProperties().getOrDefault(CELL_NAME, ""));
        List<Finding> now = pointer.isEmpty()
                ? List.of()
                : own.get().stream()
                        .filter(finding -> finding.kind() != FindingKind.MISSING)
                        .filter(finding -> about(pointer, finding.field()) && !isOnPage(finding.field()))
                        .sorted(Comparator.comparing(Finding::kind, Comparator.comparingInt(FindingKind::weight)))
                        .limit(MOST)
                        .toList();
        if (now.isEmpty()) {
            now = otherwise.stream().limit(1).toList();
        }
        if (!now.equals(shown) || !name.equals(place)) {
            shown.clear();
            shown.addAll(now);
            place = name;
            lines = now.stream()
                    .map(finding -> FindingView.brief(words, pointer.equals(finding.field()) ? name : "", finding))
                    .toList();
            draw();
        }
    }

    private void draw() {
        getChildren().setAll(lines.isEmpty() && !sentence.isEmpty() ? List.of(Wrapped.label(sentence, "why")) : lines);
    }

    /** Whether the page itself has lines about this place. */
    private boolean isOnPage(String field) {
        return getScene() != null
                && getScene().getRoot().lookupAll("." + PlaceFindings.STYLE).stream()
                        .anyMatch(box -> field.equals(box.getUserData()));
    }

    /** About the entry, or about the row or list that it is in; not about a whole step. */
    private static boolean about(String pointer, String field) {
        return pointer.equals(field) || (field.lastIndexOf('/') > 0 && pointer.startsWith(field + "/"));
    }

    /** The pointer of an entry: its own id, for a button of a choice that of the choice. */
    private static String pointer(Node node) {
        for (Node up = node; up != null; up = up.getParent()) {
            String id = up.getId();
            if (id != null && id.startsWith("/")) {
                return id;
            }
        }
        return "";
    }
}
