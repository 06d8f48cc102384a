package org.evenfall.wizard;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Severity;
import org.evenfall.finding.Step;
import org.evenfall.setup.StepState;
import org.jspecify.annotations.Nullable;

/**
 * The wizard's frame: the steps at the left, the step in front in the middle, its picture and findings at the right, what
 * it means and the way on at the foot. Knows the list of steps and nothing of what is in them.
 */
final class Shell extends BorderPane {

    private static final int MOST_TOLD = 5;

    /** Width from which the picture stands beside the entries, in lines of text. */
    private static final double ROOM_FOR_PICTURE_EM = 72;

    /** Width from which the rail has room for the steps' names; on a projector it shows their numbers. */
    private static final double ROOM_FOR_NAMES_EM = 55;

    private final SetupModel model;
    private final Sentences words;
    private final List<StepView> views;
    private final List<Node> entries;
    private final Rail rail;
    private final ScrollPane middle = new ScrollPane();
    private final StackPane pictures = new StackPane();
    private final BorderPane right = new BorderPane(pictures);
    private final VBox findings = new VBox();
    private final Label meaning = new Label();
    private final Label notice = new Label();
    private final Button undo;
    private final Button back;
    private final Button next;
    private int front;
    private boolean beside = true;
    private boolean numbersOnly;
    private boolean pressed;

    Shell(SetupModel model, Sentences words, List<StepView> views) {
        this.model = model;
        this.words = words;
        this.views = views;
        this.entries = views.stream().map(this::page).toList();
        this.rail = new Rail(words, views, this::go);
        this.undo = button("shell.undo", model::undo);
        undo.getStyleClass().add("quiet");
        undo.setFocusTraversable(false);
        this.back = button("shell.back", () -> go(front - 1));
        this.next = button("shell.next", () -> go(front + 1));
        next.getStyleClass().add("primary");
        getStyleClass().add("shell");
        middle.setContent(new StackPane(entries.toArray(new Node[0])));
        middle.setFitToWidth(true);
        middle.getStyleClass().add("middle");
        right.getStyleClass().add("right");
        findings.getStyleClass().add("findings");
        setLeft(rail);
        setCenter(middle);
        setRight(right);
        setBottom(foot());
        model.setupProperty().addListener((seen, old, fresh) -> refresh());
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        addEventFilter(MouseEvent.MOUSE_PRESSED, event -> pressed = true);
        addEventFilter(MouseEvent.MOUSE_RELEASED, event -> pressed = false);
        widthProperty().addListener((seen, old, width) -> fit());
        sceneProperty().addListener((seen, old, scene) -> {
            if (scene != null) {
                scene.focusOwnerProperty().addListener((focus, before, owner) -> bringIntoView(owner));
            }
        });
        go(0);
    }

    private Button button(String key, Runnable action) {
        Button button = new Button(words.text(key));
        button.setId(key);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    private Node page(StepView view) {
        String name = view.step().name().toLowerCase(Locale.ROOT);
        Label question = new Label(words.text("step." + name + ".question"));
        question.getStyleClass().add("question");
        question.setWrapText(true);
        Label why = new Label(words.text("step." + name + ".why"));
        why.getStyleClass().add("why");
        why.setWrapText(true);
        VBox page = new VBox(question, why);
        page.getStyleClass().add("page");
        if (words.has("step." + name + ".caution")) {
            page.getChildren().add(caution(words.text("step." + name + ".caution")));
        }
        page.getChildren().add(view.entries());
        return page;
    }

    private Node caution(String sentence) {
        Label text = new Label(sentence);
        text.setWrapText(true);
        HBox band = new HBox(FindingView.shape(StepState.WARNED), text);
        HBox.setHgrow(text, Priority.ALWAYS);
        band.getStyleClass().add("caution");
        return band;
    }

    private Node foot() {
        meaning.setWrapText(true);
        meaning.getStyleClass().add("meaning");
        notice.setWrapText(true);
        notice.getStyleClass().add("notice");
        notice.setManaged(false);
        VBox told = new VBox(meaning, notice);
        HBox.setHgrow(told, Priority.ALWAYS);
        HBox foot = new HBox(told, undo, back, next);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("foot");
        return foot;
    }

    /** A sentence at the foot, until the next change of step. */
    void tell(String sentence) {
        notice.setText(sentence);
        notice.setManaged(!sentence.isEmpty());
        notice.setVisible(!sentence.isEmpty());
    }

    int front() {
        return front;
    }

    /** Brings a step to the front. */
    void go(int index) {
        if (index < 0 || index >= views.size()) {
            return;
        }
        front = index;
        tell("");
        StepView view = views.get(index);
        for (int i = 0; i < entries.size(); i++) {
            // pages stay where they are, so that a change of step need not style them anew
            entries.get(i).setVisible(i == index);
            entries.get(i).setManaged(i == index);
        }
        middle.setVvalue(0);
        place();
        view.shown();
        refresh();
        if (getScene() != null) {
            focusFirst(entries.get(index));
        }
    }

    /**
     * Scrolls so far that what has the keyboard can be seen. Not while a mouse button is down: what is pressed is seen, and
     * it must not move away before it is released.
     */
    private void bringIntoView(@Nullable Node owner) {
        Node page = entries.get(front);
        if (pressed || owner == null || !inside(owner, page)) {
            return;
        }
        Bounds there = page.sceneToLocal(owner.localToScene(owner.getBoundsInLocal()));
        double content = page.getBoundsInLocal().getHeight();
        double view = middle.getViewportBounds().getHeight();
        double top = middle.getVvalue() * Math.max(0, content - view);
        double margin = 3 * em();
        if (content <= view) {
            return;
        }
        if (there.getMinY() - margin < top) {
            middle.setVvalue(Math.max(0, (there.getMinY() - margin) / (content - view)));
        } else if (there.getMaxY() + margin > top + view) {
            middle.setVvalue(Math.min(1, (there.getMaxY() + margin - view) / (content - view)));
        }
    }

    private static boolean inside(Node node, Node page) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at.equals(page)) {
                return true;
            }
        }
        return false;
    }

    private static void focusFirst(Node page) {
        Node first = page.lookup(".text-field");
        if (first != null) {
            first.requestFocus();
        }
    }

    private void refresh() {
        rail.update(model, front, numbersOnly, em());
        Step step = views.get(front).step();
        List<Finding> own = model.assessment().findings().stream()
                .filter(finding -> finding.step() == step)
                .toList();
        List<Finding> shown = own.stream()
                .filter(finding -> finding.severity() != Severity.MISSING)
                .limit(MOST_TOLD)
                .toList();
        findings.getChildren()
                .setAll(shown.stream()
                        .map(finding -> FindingView.line(words, finding))
                        .toList());
        meaning.setText(meaning(own));
        undo.setDisable(!model.canUndo());
        back.setDisable(front == 0);
        next.setDisable(front == views.size() - 1);
    }

    /** The worst thing first, else what to do next, else that the step is done. */
    private String meaning(List<Finding> own) {
        Optional<Finding> worst = own.stream()
                .filter(finding -> finding.severity() == Severity.STOP || finding.severity() == Severity.WARN)
                .findFirst();
        Optional<Finding> open = own.stream()
                .filter(finding -> finding.severity() == Severity.MISSING)
                .findFirst();
        if (worst.isPresent() && worst.get().severity() == Severity.STOP) {
            return words.of(worst.get());
        }
        return open.or(() -> worst).map(words::of).orElse(words.text("shell.done"));
    }

    private void key(KeyEvent event) {
        if (event.isAltDown() && event.getCode() == KeyCode.RIGHT) {
            go(front + 1);
            event.consume();
        } else if (event.isAltDown() && event.getCode() == KeyCode.LEFT) {
            go(front - 1);
            event.consume();
        } else if (event.isAltDown() && event.getCode().isDigitKey()) {
            go(event.getCode().getCode() - KeyCode.DIGIT0.getCode());
            event.consume();
        } else if (event.isShortcutDown() && event.getCode() == KeyCode.Z) {
            boolean done = event.isShiftDown() ? model.redo() : model.undo();
            event.consume();
            tell(done ? "" : words.text("shell.nothingToUndo"));
        }
    }

    /** The picture stands at the right where there is room for it, else beneath the entries. */
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
        if (room != beside) {
            beside = room;
            place();
        }
    }

    private void place() {
        VBox page = (VBox) entries.get(front);
        Node picture = views.get(front).picture();
        if (beside) {
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
            view.picture().setVisible(!beside || view.picture().equals(picture));
            view.picture().setManaged(!beside || view.picture().equals(picture));
        }
        right.setVisible(beside);
        right.setManaged(beside);
    }

    private double em() {
        return notice.getFont().getSize();
    }

    @Override
    protected void layoutChildren() {
        fit();
        super.layoutChildren();
    }
}
