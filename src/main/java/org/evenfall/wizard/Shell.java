package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.StepState;
import org.evenfall.wizard.form.FocusedFindings;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.SetupModel;

/**
 * The wizard's frame: the steps with the prompts of the one in front at the left, the prompt in front in the middle, its
 * picture and findings at the right, what it means and the way on at the foot. Knows the list of steps and prompts and
 * nothing of what is in them.
 */
final class Shell extends BorderPane {

    /** Width from which the picture has room at the right of the entries, in lines of text. */
    private static final double ROOM_FOR_PICTURE_EM = 66;

    /** Width from which the picture has two fifths of it. */
    private static final double ROOM_FOR_LARGE_PICTURE_EM = 85;

    /** Width from which the rail has room for names; on a projector it shows numbers. */
    private static final double ROOM_FOR_NAMES_EM = 55;

    /** Height from which the rail has room for a line of result for each step. */
    private static final double ROOM_FOR_DETAILS_EM = 52;

    private final SetupModel model;
    private final Sentences words;
    private final List<PromptPage> pages = new ArrayList<>();
    private final Rail rail;
    private final ScrollPane middle = new ScrollPane();
    private final StackPane pictures = new StackPane();
    private final BorderPane right = new BorderPane(pictures);
    private final StepFindings findings;
    private final FocusedFindings focused;
    private final Foot foot;
    private int front;
    private boolean pictureAtRight = true;
    private boolean numbersOnly;
    private boolean withoutDetails;

    Shell(SetupModel model, Sentences words, List<StepView> views) {
        this.model = model;
        this.words = words;
        for (StepView view : views) {
            List<Prompt> prompts = view.prompts();
            for (int i = 0; i < prompts.size(); i++) {
                pages.add(new PromptPage(words, view.step(), prompts.get(i), i == 0));
            }
        }
        this.rail = new Rail(words, views, pages, this::go, this::show);
        this.findings = new StepFindings(words);
        this.focused = new FocusedFindings(model, words);
        this.foot = new Foot(words, model::undo, this::back, this::next);
        getStyleClass().add("shell");
        middle.setContent(new StackPane(pages.toArray(new Node[0])));
        middle.setFitToWidth(true);
        middle.getStyleClass().add("middle");
        right.getStyleClass().add("right");
        setLeft(rail);
        VBox.setVgrow(middle, Priority.ALWAYS);
        setCenter(new VBox(middle, focused));
        setRight(right);
        setBottom(foot);
        model.follow(this::refresh);
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        addEventHandler(KeyEvent.KEY_PRESSED, this::enter);
        new FocusScroll(this, middle, () -> pages.get(front), this::em).install();
        widthProperty().addListener((property, old, width) -> fit());
        go(0);
    }

    /** A sentence at the foot, until the next change of prompt; empty removes it. */
    void showNotice(String sentence) {
        foot.showNotice(sentence);
    }

    /** Number of the step in front. */
    int front() {
        return pages.get(front).step().number();
    }

    /** Where the page in front scrolls. */
    ScrollPane middle() {
        return middle;
    }

    /** The pages of all prompts, in their order. */
    List<PromptPage> pages() {
        return List.copyOf(pages);
    }

    /** Id of the prompt in front. */
    String prompt() {
        return pages.get(front).prompt().id();
    }

    /** Brings the first prompt of a step to the front; a number that is none does nothing. */
    void go(int step) {
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i).step().number() == step) {
                bring(i);
                return;
            }
        }
    }

    /** Brings a prompt to the front by its id; one that is none does nothing. */
    void show(String id) {
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i).prompt().id().equals(id)) {
                bring(i);
                return;
            }
        }
    }

    /** Brings the prompt to the front that a node belongs to; nothing for one that belongs to none. */
    void show(Node node) {
        for (Node up = node; up != null; up = up.getParent()) {
            if (up instanceof PromptPage page && pages.indexOf(page) != front) {
                bring(pages.indexOf(page));
            }
        }
    }

    private void next() {
        move(1);
    }

    private void back() {
        move(-1);
    }

    /** To the next prompt, or the one before, that is asked in this setup. */
    private void move(int way) {
        for (int i = front + way; i >= 0 && i < pages.size(); i += way) {
            if (pages.get(i).prompt().asked()) {
                bring(i);
                return;
            }
        }
    }

    private void bring(int index) {
        front = index;
        showNotice("");
        for (int i = 0; i < pages.size(); i++) {
            // pages stay in the scene, so that a change need not style them anew
            pages.get(i).setVisible(i == index);
            pages.get(i).setManaged(i == index);
        }
        middle.setVvalue(0);
        placePicture();
        pages.get(index).prompt().shown();
        refresh();
        if (getScene() != null) {
            // a field takes keys only once it is styled, and the next key may come before the next frame
            pages.get(index).applyCss();
            EntryOrder.first(pages.get(index)).ifPresent(Node::requestFocus);
            middle.setVvalue(0);
        }
    }

    /** Enter goes to the next entry, from the last one to the next prompt; what uses Enter itself consumes it before. */
    private void enter(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER && event.getTarget() instanceof Node at && inFront(at)) {
            event.consume();
            EntryOrder.after(pages.get(front), at).ifPresentOrElse(Node::requestFocus, this::next);
        }
    }

    private boolean inFront(Node node) {
        for (Node up = node; up != null; up = up.getParent()) {
            if (up.equals(pages.get(front))) {
                return true;
            }
        }
        return false;
    }

    /** Findings of a page; those about no entry are shown with the last prompt of their step. */
    private List<Finding> own(int index) {
        PromptPage page = pages.get(index);
        List<Finding> all = model.assessment().findings();
        List<Finding> own = new ArrayList<>(page.own(all));
        boolean last = index + 1 == pages.size() || pages.get(index + 1).step() != page.step();
        if (last) {
            List<Finding> placed = pages.stream()
                    .filter(other -> other.step() == page.step())
                    .flatMap(other -> other.own(all).stream())
                    .toList();
            all.stream()
                    .filter(finding -> finding.step() == page.step() && !placed.contains(finding))
                    .forEach(own::add);
        }
        return own;
    }

    private void refresh() {
        List<StepState> states = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            states.add(
                    pages.get(i).step() == pages.get(front).step()
                            ? PromptState.of(own(i), pages.get(i).begun())
                            : StepState.OPEN);
        }
        rail.update(model.assessment().states(), front, states, numbersOnly, numbersOnly || withoutDetails, em());
        List<Finding> own = own(front);
        List<Finding> wrong = pages.get(front).own(own).stream()
                .filter(finding -> finding.kind() == FindingKind.STOP)
                .toList();
        // what cannot be read is shown once, where the keyboard is
        focused.otherwise(wrong);
        findings.show(own.stream().filter(finding -> !wrong.contains(finding)).toList());
        foot.update(
                wrong.isEmpty() ? findings.meaning(own) : words.text("shell.mend"),
                model.canUndo(),
                front > 0,
                front < pages.size() - 1);
    }

    private void key(KeyEvent event) {
        if (event.getTarget() instanceof ToggleButton) {
            // a choice is made by Space; Enter goes on
            enter(event);
            if (event.isConsumed()) {
                return;
            }
        }
        switch (ShellKey.of(event)) {
            case NEXT -> next();
            case BACK -> back();
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
        boolean low = getHeight() < ROOM_FOR_DETAILS_EM * em();
        if (narrow != numbersOnly || low != withoutDetails) {
            numbersOnly = narrow;
            withoutDetails = low;
            refresh();
        }
        right.setPrefWidth(Math.max(22 * em(), width * (width < ROOM_FOR_LARGE_PICTURE_EM * em() ? 0.30 : 0.40)));
        if (room != pictureAtRight) {
            pictureAtRight = room;
            placePicture();
        }
    }

    private void placePicture() {
        PromptPage page = pages.get(front);
        Node picture = page.prompt().picture();
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
        for (PromptPage other : pages) {
            Node its = other.prompt().picture();
            boolean shown = its.equals(picture);
            its.setVisible(shown);
            its.setManaged(shown);
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
