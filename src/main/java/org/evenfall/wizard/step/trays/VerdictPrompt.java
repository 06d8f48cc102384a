package org.evenfall.wizard.step.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.result.AdviceLines;
import org.evenfall.result.ResultLine;
import org.evenfall.result.TrayTestLines;
import org.evenfall.setup.AdviceFindings;
import org.evenfall.setup.NextAction;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.trays.Uniformity;
import org.evenfall.wizard.form.ConfirmConditions;
import org.evenfall.wizard.form.Disclosure;
import org.evenfall.wizard.form.FigureRow;
import org.evenfall.wizard.form.FindingView;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.Lines;
import org.evenfall.wizard.form.Navigation;
import org.evenfall.wizard.form.VisibleWhen;
import org.jspecify.annotations.Nullable;

/** How even the field is, and the one thing to do next; its button goes to where that is done. */
public final class VerdictPrompt extends FormPrompt {

    private final TrayTests tests;
    private final Actions actions;
    private final BooleanProperty whyAsked = new SimpleBooleanProperty();

    /** @param picture of the step */
    public VerdictPrompt(Form form, Supplier<? extends Node> picture, TrayTests tests, Navigation navigation) {
        super("6d", form, picture);
        this.tests = tests;
        this.actions = new Actions(form, tests, navigation);
    }

    @Override
    public Node entries() {
        return new VBox(
                VisibleWhen.sentence(form(), "result-figure", () -> ofLast(TrayTestLines::fieldCv)),
                ConfirmConditions.button(form(), "trays.assumed"),
                instruction(),
                buttons(),
                FigureRow.of(form(), this::figures),
                more());
    }

    private @Nullable Uniformity last() {
        return form().model().assessment().trays().lastEvenness();
    }

    private String ofLast(TestSentence sentence) {
        Uniformity last = last();
        return last == null ? "" : sentence.of(form().words(), last);
    }

    /** A sentence about a test. */
    @FunctionalInterface
    private interface TestSentence {
        String of(Sentences words, Uniformity test);
    }

    private List<ResultLine> figures() {
        Uniformity last = last();
        List<ResultLine> lines = new ArrayList<>();
        if (last != null) {
            lines.addAll(TrayTestLines.figures(form().words(), last));
            lines.addAll(TrayTestLines.differences(form().words(), last.contrasts()));
        }
        return lines;
    }

    /** What to do, why, and what to expect then. */
    private Node instruction() {
        VBox decisive = new VBox();
        Lines.of(form(), decisive, () -> reasons(AdviceFindings::decisive), this::reason);
        VBox box = new VBox(
                VisibleWhen.sentence(form(), "instruction-title", () -> AdviceLines.headline(form().words(), advice())),
                decisive,
                VisibleWhen.sentence(form(), "instruction-line", () -> AdviceLines.expected(form().words(), advice())));
        box.getStyleClass().add("instruction");
        return box;
    }

    private @Nullable Advice advice() {
        return form().model().assessment().trays().advice();
    }

    private List<Finding> reasons(Function<Advice, Finding> which) {
        Advice advice = advice();
        return advice == null ? List.of() : List.of(which.apply(advice));
    }

    private Node reason(Finding finding) {
        return FindingView.brief(form().words(), finding);
    }

    private Node buttons() {
        Button main = form().button("trays.act." + actions.next(), actions::run);
        main.setId("trays.act");
        main.getStyleClass().add("primary");
        form().follow(() -> main.setText(form().words().text("trays.act." + actions.next())));
        Button run = form().button("trays.oneMoreRun", () -> actions.moreRuns(1));
        return form().row(main, VisibleWhen.when(form(), this::mayRunMore, run));
    }

    private boolean mayRunMore() {
        return last() != null && !tests.lastIsToDrive() && actions.next() != NextAction.MORE_RUNS;
    }

    /** What explains it, for who wants to know. */
    private Node more() {
        VBox others = new VBox();
        others.getStyleClass().add("attempts");
        Lines.of(form(), others, this::others, this::reason);
        return VisibleWhen.when(
                form(),
                () -> last() != null,
                new Disclosure(
                        form(),
                        whyAsked,
                        "trays.why",
                        others,
                        VisibleWhen.sentence(
                                form(),
                                "sentence",
                                () -> ofLast((words, last) -> TrayTestLines.noDifference(words, last.contrasts()))),
                        VisibleWhen.sentence(
                                form(),
                                "sentence",
                                () -> TrayTestLines.loss(
                                        form().words(),
                                        form().model().assessment().trays())),
                        VisibleWhen.sentence(form(), "sentence", () -> ofLast(TrayTestLines::meanRate)),
                        form().sentence("trays.twoCvs"),
                        VisibleWhen.when(
                                form(),
                                () -> form().model()
                                                .assessment()
                                                .machine()
                                                .levers()
                                                .size()
                                        > 1,
                                form().choice(TrayPaths.TWO_LEVERS))));
    }

    private List<Finding> others() {
        Advice advice = advice();
        return advice == null ? List.of() : AdviceFindings.others(advice);
    }

    @Override
    public boolean holds(String pointer) {
        // what a test was driven under decides whether it counts
        return tests.isTest(pointer) || (tests.size() > 0 && tests.holds(pointer, false));
    }

    @Override
    public Optional<Boolean> answered() {
        return Optional.of(last() != null);
    }

    @Override
    public boolean holdsRest() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("trayCv", "fieldCv", "run", "lever")
                .from("source.cvLimits", "source.fieldCv", "source.cropLoss", "source.orderOfCure");
    }
}
