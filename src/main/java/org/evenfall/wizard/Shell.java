package org.evenfall.wizard;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.wizard.form.SetupModel;

/**
 * The wizard's frame: the steps at the left, the entries of the step in front in the middle, its picture and findings at
 * the right, what it means and the way on at the foot. Knows the list of steps and nothing of what is in them.
 */
final class Shell extends BorderPane {

    /** Width from which the picture has room at the right of the entries, in lines of text. */
    private static final double ROOM_FOR_PICTURE_EM = 72;

    /** Width from which the rail has room for the steps' names; on a projector it shows their numbers. */
    private static final double ROOM_FOR_NAMES_EM = 55;

    private final SetupModel model;
    private final Sentences words;
    private final List<StepView> views;
    private final List<VBox> pages;
    private final Rail rail;
    private final ScrollPane middle = new ScrollPane();
    private final StackPane pictures = new StackPane();
    private final BorderPane right = new BorderPane(pictures);
    private final StepFindings findings;
    private final Foot foot;
    private int front;
    private boolean pictureAtRight = true;
    private boolean numbersOnly;

    Shell(SetupModel model, Sentences words, List<StepView> views) {
        this.model = model;
        this.words = words;
        this.views = views;
        this.pages = views.stream().map(view -> StepPage.of(words, view)).toList();
        this.rail = new Rail(words, views, this::go);
        this.findings = new StepFindings(words);
        this.foot = new Foot(words, model::undo, () -> go(front - 1), () -> go(front + 1));
        getStyleClass().add("shell");
        middle.setContent(new StackPane(pages.toArray(new Node[0])));
        middle.setFitToWidth(true);
        middle.getStyleClass().add("middle");
        right.getStyleClass().add("right");
        setLeft(rail);
        setCenter(middle);
        setRight(right);
        setBottom(foot);
        model.follow(this::refresh);
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        new FocusScroll(this, middle, () -> pages.get(front), this::em).install();
        widthProperty().addListener((property, old, width) -> fit());
        go(0);
    }

    /** A sentence at the foot, until the next change of step; empty removes it. */
    void showNotice(String sentence) {
        foot.showNotice(sentence);
    }

    /** Index of the step in front. */
    int front() {
        return front;
    }

    /** Brings a step to the front; an index that is none does nothing. */
    void go(int index) {
        if (index < 0 || index >= views.size()) {
            return;
        }
        front = index;
        showNotice("");
        for (int i = 0; i < pages.size(); i++) {
            // pages stay in the scene, so that a change of step need not style them anew
            pages.get(i).setVisible(i == index);
            pages.get(i).setManaged(i == index);
        }
        middle.setVvalue(0);
        placePicture();
        views.get(index).shown();
        refresh();
        if (getScene() != null) {
            focusFirst(pages.get(index));
        }
    }

    private static void focusFirst(Node page) {
        Node first = page.lookup(".text-field");
        if (first != null) {
            first.requestFocus();
        }
    }

    private void refresh() {
        rail.update(model.assessment().states(), front, numbersOnly, em());
        List<Finding> own = model.assessment().findings().stream()
                .filter(finding -> finding.step() == views.get(front).step())
                .toList();
        findings.show(own);
        foot.update(findings.meaning(own), model.canUndo(), front > 0, front < views.size() - 1);
    }

    private void key(KeyEvent event) {
        switch (ShellKey.of(event)) {
            case NEXT -> go(front + 1);
            case BACK -> go(front - 1);
            case STEP -> go(ShellKey.digit(event));
            case UNDO -> showNotice(model.undo() ? "" : words.text("shell.nothingToUndo"));
            case REDO -> showNotice(model.redo() ? "" : words.text("shell.nothingToUndo"));
            case NONE -> {
                return;
            }
        }
        event.consume();
    }

    /** The picture is at the right where there is room for it, else below the entries. */
    private void fit() {
        double width = getWidth();
        boolean room = width > ROOM_FOR_PICTURE_EM * em();
        boolean narrow = width < ROOM_FOR_NAMES_EM * em();
        rail.setPrefWidth(narrow ? 5 * em() : Math.min(15 * em(), width * 0.20));
        if (narrow != numbersOnly) {
            numbersOnly = narrow;
            refresh();
        }
        right.setPrefWidth(Math.max(22 * em(), width * 0.30));
        if (room != pictureAtRight) {
            pictureAtRight = room;
            placePicture();
        }
    }

    private void placePicture() {
        VBox page = pages.get(front);
        Node picture = views.get(front).picture();
        if (pictureAtRight) {
            if (!pictures.getChildren().contains(picture)) {
                pictures.getChildren().add(picture);
            }
            right.setBottom(findings);
        } else {
            right.setBottom(null);
            page.getChildren().removeAll(findings, picture);
            page.getChildren().addAll(findings, picture);
        }
        for (StepView view : views) {
            boolean shown = !pictureAtRight || view.picture().equals(picture);
            view.picture().setVisible(shown);
            view.picture().setManaged(shown);
        }
        right.setVisible(pictureAtRight);
        right.setManaged(pictureAtRight);
    }

    /** Height of a line of text, px. */
    private double em() {
        return foot.fontSize();
    }

    @Override
    protected void layoutChildren() {
        fit();
        super.layoutChildren();
    }
}
