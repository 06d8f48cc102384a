package org.evenfall.wizard.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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

    private final SetupModel model;
    private final Sentences words;
    private final List<Finding> shown = new ArrayList<>();
    private String place = "";
    private @Nullable Node focused;

    /** @param model the setup that is typed */
    public FocusedFindings(SetupModel model, Sentences words) {
        this.model = model;
        this.words = words;
        getStyleClass().addAll("told", "focused-findings");
        model.follow(this::refresh);
        sceneProperty().flatMap(scene -> scene.focusOwnerProperty()).subscribe(owner -> {
            focused = owner;
            refresh();
        });
    }

    private void refresh() {
        Node at = focused;
        String pointer = at == null ? "" : pointer(at);
        String name = at == null ? "" : String.valueOf(at.getProperties().getOrDefault(CELL_NAME, ""));
        List<Finding> now = pointer.isEmpty()
                ? List.of()
                : model.assessment().findings().stream()
                        .filter(finding -> finding.kind() != FindingKind.MISSING)
                        .filter(finding -> !finding.field().isEmpty()
                                && (pointer.equals(finding.field()) || pointer.startsWith(finding.field() + "/")))
                        .sorted(Comparator.comparing(Finding::kind, Comparator.comparingInt(FindingKind::weight)))
                        .limit(MOST)
                        .toList();
        if (!now.equals(shown) || !name.equals(place)) {
            shown.clear();
            shown.addAll(now);
            place = name;
            getChildren()
                    .setAll(now.stream()
                            .map(finding ->
                                    FindingView.line(words, pointer.equals(finding.field()) ? name : "", finding))
                            .toList());
        }
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
