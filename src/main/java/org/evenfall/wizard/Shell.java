package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Supplier;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
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
import org.evenfall.finding.Step;
import org.evenfall.setup.path.PrivateEntries;
import org.evenfall.wizard.form.FocusedFindings;
import org.evenfall.wizard.form.Keyboard;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.PlainScrollPane;
import org.evenfall.wizard.form.SetupModel;
import org.jspecify.annotations.Nullable;

/**
 * The wizard's frame: the steps with the prompts of the one in front at the left, the prompt in front in the middle, its
 * picture and findings at the right, what it means and the way on at the foot. Knows the list of steps and prompts and
 * nothing of what is in them.
 */
final class Shell extends BorderPane implements Frame {

    private final SetupModel model;
    private final Sentences words;
    private final PromptPages pages;
    private final StackPane steps = new StackPane();
    private final Lazy<Rail> rail;
    private final ScrollPane middle = new PlainScrollPane();
    private final StackPane stack = new StackPane();
    private final VBox column = new VBox();
    private final VBox below = new VBox();
    private final CautionPage caution;
    private final Lazy<DayPage> day;
    private final SidePane side;
    private final StepFindings findings;
    private final FocusedFindings focused;
    private final Foot foot;
    private final Banner banner = new Banner();
    private int front;

    /** Where the way on leads back to; null while it leads to the next prompt. */
    private @Nullable Integer visitedFrom;

    private Runnable stepLeft = () -> {};
    private ShellRoom room = ShellRoom.PLENTY;

    Shell(SetupModel model, Sentences words, List<StepView> views) {
        this.model = model;
        this.words = words;
        this.pages = new PromptPages(
                model,
                views.stream()
                        .flatMap(view -> view.prompts().stream()
                                .map(prompt -> new PromptPage(model, words, view.step(), prompt)))
                        .toList());
        this.rail = new Lazy<>(() -> new Rail(words, views, pages.all(), this::go, this::show));
        this.findings = new StepFindings(words);
        this.focused = new FocusedFindings(model, words, () -> pages.own(front));
        this.caution = new CautionPage(words, this::cautionRead);
        this.day = new Lazy<>(() -> new DayPage(words, this::home));
        this.side = new SidePane(words, findings, new HelpPane(words));
        this.foot = new Foot(words, model::undo, this::help, this::back, this::next);
        getStyleClass().add("shell");
        stack.getChildren().addAll(pages.all());
        stack.getChildren().add(caution);
        middle.setContent(stack);
        middle.setFitToWidth(true);
        middle.getStyleClass().add("middle");
        setTop(banner);
        setLeft(steps);
        VBox.setVgrow(middle, Priority.ALWAYS);
        setCenter(column);
        setRight(side);
        setBottom(below);
        model.followLast(this::refresh);
        model.onRemoval(() -> showNotice(words.text("shell.removed")));
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        addEventHandler(KeyEvent.KEY_PRESSED, this::enter);
        addEventHandler(ActionEvent.ACTION, this::pressed);
        new FocusScroll(this, middle, () -> pages.get(front), this::em).install();
        sceneProperty().flatMap(scene -> scene.focusOwnerProperty()).subscribe(owner -> model.endEdit());
        widthProperty().addListener((property, old, width) -> fit());
        go(0);
    }

    @Override
    public void showNotice(String sentence) {
        foot.showNotice(model.namesHidden() ? PrivateEntries.masked(model.setup(), sentence) : sentence);
    }

    @Override
    public void readOnly(boolean on) {
        pages.all().forEach(page -> page.setDisable(on && !page.prompt().alone()));
    }

    @Override
    public void ask(Supplier<String> sentence, List<Choice> choices) {
        banner.show(sentence, choices);
    }

    /** The sentences of the window. */
    Sentences words() {
        return words;
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
        return pages.all();
    }

    /** Id of the prompt in front. */
    String prompt() {
        return pages.prompt(front).id();
    }

    /** Brings the first prompt of a step to the front; a number that is none does nothing. */
    void go(int step) {
        pages.first(step).ifPresent(this::bring);
    }

    /** One that is none does nothing. */
    @Override
    public void show(String id) {
        pages.of(id).ifPresent(this::bring);
    }

    @Override
    public void visit(String id) {
        int from = front;
        pages.of(id).ifPresent(index -> {
            bring(index);
            visitedFrom = from;
            refresh();
        });
    }

    @Override
    public void mend(Finding finding) {
        visit(pages.prompt(pages.about(finding)).id());
    }

    /** Brings the prompt to the front that a node belongs to; nothing for one that belongs to none. */
    void show(Node node) {
        pages.of(node).ifPresent(index -> {
            if (index != front) {
                bring(index);
            }
        });
    }

    @Override
    public void go(Step step) {
        go(step.number());
    }

    @Override
    public void goOn() {
        bring(pages.nextOpen());
    }

    @Override
    public List<Review> review() {
        return pages.review(words);
    }

    @Override
    public void showDay() {
        DayPage shown = day.get();
        if (!stack.getChildren().contains(shown)) {
            stack.getChildren().add(shown);
        }
        cover(shown);
        shown.focus();
    }

    private boolean isDayShown() {
        return day.ifMade().filter(Node::isVisible).isPresent();
    }

    /** Shows a page in place of that of the prompt in front; null uncovers that. */
    private void cover(@Nullable Node over) {
        PromptPage page = pages.get(front);
        List<Node> covers = new ArrayList<>(List.of(page, caution));
        day.ifMade().ifPresent(covers::add);
        for (Node one : covers) {
            boolean shown = one.equals(over == null ? page : over);
            one.setVisible(shown);
            one.setManaged(shown);
        }
        middle.setVvalue(0);
        place();
    }

    private void next() {
        move(1);
    }

    private void back() {
        move(-1);
    }

    /** To the next prompt, or the one before, that is asked in this setup. */
    private void move(int way) {
        Integer from = visitedFrom;
        if (from != null && way > 0) {
            bring(from);
        } else {
            pages.next(front, way).ifPresent(this::bring);
        }
    }

    /** Runs whenever the person goes from one step to another. */
    void onStepLeft(Runnable action) {
        stepLeft = action;
    }

    private void bring(int index) {
        if (pages.get(index).step() != pages.get(front).step()) {
            stepLeft.run();
        }
        front = index;
        pages.get(index).make();
        visitedFrom = null;
        showNotice("");
        side.help(pages.prompt(front), List.of(), false);
        boolean toRead = cautionUnread();
        for (PromptPage page : pages.all()) {
            // pages stay in the scene, so that a change need not style them anew
            page.setVisible(false);
            page.setManaged(false);
        }
        if (toRead) {
            caution.show(pages.get(index).step());
        }
        cover(toRead ? caution : null);
        pages.prompt(index).shown();
        refresh();
        focusFront();
        pages.all().stream().filter(page -> !isInFrontStep(page)).forEach(PromptPage::drop);
    }

    /** Whether a page is one of the step in front; the content of the others is dropped. */
    boolean isInFrontStep(PromptPage page) {
        return page.step() == pages.get(front).step();
    }

    /** Puts the keyboard where the page in front begins; nothing before the window is made. */
    void focusFront() {
        if (getScene() == null) {
            return;
        }
        if (caution.isVisible()) {
            caution.focus();
        } else {
            EntryOrder.first(pages.get(front), pages.prompt(front).alone())
                    .ifPresentOrElse(Keyboard::to, foot::focusNext);
        }
        middle.setVvalue(0);
    }

    /** Whether the cautions of the step come now: before its first prompt that can hurt, and every one after it. */
    private boolean cautionUnread() {
        OptionalInt before = pages.cautionOf(pages.get(front).step());
        return before.isPresent()
                && front >= before.getAsInt()
                && !model.setup()
                        .guide()
                        .cautionsRead()
                        .contains(pages.prompt(before.getAsInt()).id());
    }

    private void cautionRead() {
        Integer from = visitedFrom;
        pages.cautionOf(pages.get(front).step())
                .ifPresent(before -> model.note(setup -> setup.withGuide(
                        setup.guide().withCautionRead(pages.prompt(before).id()))));
        bring(front);
        visitedFrom = from;
        refresh();
    }

    private void home() {
        bring(0);
    }

    private void help() {
        side.help(pages.prompt(front), pages.findings(front), !side.helping());
        place();
    }

    /** Enter goes to the next entry, from the last one to the next prompt; what uses Enter itself consumes it before. */
    private void enter(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER && event.getTarget() instanceof Node at && inFront(at)) {
            event.consume();
            if (at instanceof MenuButton menu) {
                menu.show();
                return;
            }
            if (at instanceof Button main
                    && (EntryOrder.isMain(main) || pages.prompt(front).alone())) {
                main.fire();
                return;
            }
            EntryOrder.after(pages.get(front), at).ifPresentOrElse(Keyboard::to, this::next);
        }
    }

    /** Where a button was pressed that is gone now, what it brought takes the next key, which may come before the next frame. */
    private void pressed(ActionEvent event) {
        if (event.getTarget() instanceof Node button && (button.getScene() == null || !button.isVisible())) {
            Node owner = getScene().getFocusOwner();
            if (owner == null || owner.equals(button)) {
                focusFront();
            }
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

    private void refresh() {
        if (pages.prompt(front).alone()) {
            // nothing of the job is asked here: only notices are at the foot
            foot.showHidden(model.namesHidden());
            banner.refresh();
            foot.update("", model.canUndo(), false, false);
            return;
        }
        refreshRail();
        List<Finding> own = pages.findings(front);
        List<Finding> wrong = unreadable();
        // what cannot be read is shown once, where the keyboard is
        focused.otherwise(wrong);
        showFindings();
        focused.otherwise(room.hall() && !caution.isVisible() ? pages.get(front).how() : "");
        foot.showHidden(model.namesHidden());
        banner.refresh();
        foot.update(
                wrong.isEmpty() ? findings.meaning(prompt(), own, pages.state(front)) : words.text("shell.mend"),
                model.canUndo(),
                front > 0,
                front < pages.all().size() - 1);
        foot.nameWayOn(visitedFrom == null ? "" : pages.prompt(visitedFrom).id());
    }

    private void refreshRail() {
        List<PromptState> states = new ArrayList<>();
        for (int i = 0; i < pages.all().size(); i++) {
            boolean inStep = pages.get(i).step() == pages.get(front).step();
            states.add(inStep ? pages.state(i) : PromptState.OPEN);
        }
        rail.get()
                .update(
                        model.assessment().states(),
                        front,
                        states,
                        room.numbersOnly(),
                        room.numbersOnly() || room.withoutDetails(),
                        em());
    }

    /** Each finding once: what is about an entry is shown where the keyboard is, the rest at the right. */
    private void showFindings() {
        List<Finding> own = pages.findings(front);
        List<Finding> elsewhere = pages.atEntries(front);
        findings.show(
                own.stream().filter(finding -> !elsewhere.contains(finding)).toList(), room.hall());
    }

    private List<Finding> unreadable() {
        return pages.own(front).stream()
                .filter(finding -> finding.kind() == FindingKind.STOP)
                .toList();
    }

    private void key(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE && (side.helping() || isDayShown())) {
            bring(front);
            event.consume();
            return;
        }
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
            case HELP -> help();
            case SKIP -> skip();
            case HIDE -> hideNames();
            case UNDO -> showNotice(model.undo() ? "" : words.text("shell.nothingToUndo"));
            case REDO -> showNotice(model.redo() ? "" : words.text("shell.nothingToUndo"));
            case NONE -> {
                return;
            }
        }
        event.consume();
    }

    /** What has room at this size of window and text. */
    private void fit() {
        ShellRoom now =
                ShellRoom.of(getWidth(), getHeight(), em(), getStyleClass().contains("projector"));
        ShellRoom before = room;
        room = now;
        rail.ifMade().ifPresent(made -> made.setPrefWidth(now.railWidth()));
        side.setPrefWidth(now.sideWidth(pages.get(front).isWide()));
        if (now.hall() != before.hall()) {
            pages.all().forEach(page -> page.inHall(now.hall()));
        }
        if (now.hall() != before.hall()
                || now.numbersOnly() != before.numbersOnly()
                || now.withoutDetails() != before.withoutDetails()) {
            refresh();
        }
        if (now.picture() != before.picture() || now.hall() != before.hall()) {
            place();
        }
    }

    /** The steps at the left and the picture, unless the prompt in front takes the whole window. */
    private void place() {
        boolean alone = pages.prompt(front).alone();
        if (!alone) {
            // from now on they stay: what was away while the size of the text changed would keep the size before
            if (steps.getChildren().isEmpty()) {
                steps.getChildren().add(rail.get());
            }
            rail.get().setPrefWidth(room.railWidth());
        }
        steps.setVisible(!alone);
        steps.setManaged(!alone);
        focused.setVisible(!alone);
        focused.setManaged(!alone);
        foot.showWays(!alone);
        side.place(pages.get(front), room.picture() && !caution.isVisible(), model.namesHidden());
        side.setPrefWidth(room.sideWidth(pages.get(front).isWide()));
        placeFoot();
    }

    /** In a hall what explains and warns is at the foot, as wide as the window; else in the column of the entries. */
    private void placeFoot() {
        List<Node> feet = new ArrayList<>();
        if (room.hall()) {
            if (!caution.isVisible() && !isDayShown()) {
                pages.get(front).caution().ifPresent(feet::add);
            }
            feet.add(focused);
        }
        feet.add(foot);
        if (!below.getChildren().equals(feet)) {
            column.getChildren().setAll(room.hall() ? List.of(middle) : List.of(middle, focused));
            below.getChildren().setAll(feet);
        }
    }

    private void hideNames() {
        showNotice("");
        model.hideNames(!model.namesHidden());
        Node owner = getScene().getFocusOwner();
        pages.prompt(front).shown();
        place();
        if (owner == null || owner.getScene() == null) {
            EntryOrder.first(pages.get(front), pages.prompt(front).alone()).ifPresent(Keyboard::to);
        }
    }

    private void skip() {
        Node button = lookup("#skip-" + prompt());
        if (button instanceof Button skip) {
            skip.fire();
        }
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
