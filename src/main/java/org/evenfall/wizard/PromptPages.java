package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javafx.scene.Node;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.result.Answers;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.SetupModel;

/** The pages of all prompts in their order, and which findings and which state each has. */
final class PromptPages {

    private final SetupModel model;
    private final List<PromptPage> all;

    PromptPages(SetupModel model, List<PromptPage> all) {
        this.model = model;
        this.all = List.copyOf(all);
    }

    List<PromptPage> all() {
        return all;
    }

    PromptPage get(int index) {
        return all.get(index);
    }

    Prompt prompt(int index) {
        return all.get(index).prompt();
    }

    /** The first page of a step. */
    OptionalInt first(int step) {
        return IntStream.range(0, all.size())
                .filter(i -> all.get(i).step().number() == step)
                .findFirst();
    }

    /** The page of a prompt by its id. */
    OptionalInt of(String id) {
        return IntStream.range(0, all.size())
                .filter(i -> prompt(i).id().equals(id))
                .findFirst();
    }

    /** The page that a node is on. */
    OptionalInt of(Node node) {
        for (Node up = node; up != null; up = up.getParent()) {
            if (up instanceof PromptPage page) {
                return OptionalInt.of(all.indexOf(page));
            }
        }
        return OptionalInt.empty();
    }

    /** The page after another, or before it, that is asked in this setup and not known already. */
    OptionalInt next(int index, int way) {
        return IntStream.iterate(index + way, i -> i >= 0 && i < all.size(), i -> i + way)
                .filter(i -> prompt(i).asked() && !prompt(i).known())
                .findFirst();
    }

    /** The prompt before which the cautions of its step are read: the first that may hurt; empty without. */
    OptionalInt cautionOf(Step step) {
        return IntStream.range(0, all.size())
                .filter(i -> all.get(i).step() == step && prompt(i).mayHurt())
                .findFirst();
    }

    /** Findings of a page; those about no entry belong to the page of their step that takes them, else to its last. */
    List<Finding> findings(int index) {
        PromptPage page = all.get(index);
        List<Finding> every = model.assessment().findings();
        List<Finding> own = new ArrayList<>(own(index));
        if (index == restOf(page.step())) {
            List<Finding> placed = IntStream.range(0, all.size())
                    .filter(i -> all.get(i).step() == page.step())
                    .boxed()
                    .flatMap(i -> own(i).stream())
                    .toList();
            every.stream()
                    .filter(finding -> finding.step() == page.step() && !placed.contains(finding))
                    .forEach(own::add);
        }
        return own;
    }

    /** Findings about something on a page: a prompt that holds a place goes before one that has only its entries. */
    List<Finding> own(int index) {
        PromptPage page = all.get(index);
        List<String> places = page.places();
        return model.assessment().findings().stream()
                .filter(finding -> finding.step() == page.step())
                .filter(finding -> all.stream()
                                .anyMatch(other -> other.step() == page.step()
                                        && other.prompt().holds(finding.field()))
                        ? page.prompt().holds(finding.field())
                        : PromptPage.isAbout(finding.field(), places))
                .toList();
    }

    /** Those of the findings of a page that are about an entry on it. */
    List<Finding> atEntries(int index) {
        List<String> places = all.get(index).places();
        return own(index).stream()
                .filter(finding -> PromptPage.isAbout(finding.field(), places))
                .toList();
    }

    /** The page on which something is found; the first of its step where that is on none. */
    int about(Finding finding) {
        return IntStream.range(0, all.size())
                .filter(i -> get(i).step() == finding.step())
                .filter(i -> findings(i).contains(finding))
                .findFirst()
                .orElse(first(finding.step().number()).orElse(0));
    }

    private int restOf(Step step) {
        List<Integer> pages = IntStream.range(0, all.size())
                .filter(i -> all.get(i).step() == step)
                .boxed()
                .toList();
        return pages.stream().filter(i -> prompt(i).holdsRest()).findFirst().orElse(pages.get(pages.size() - 1));
    }

    /** The state of a page. */
    PromptState state(int index) {
        PromptPage page = all.get(index);
        if (page.prompt().alone()) {
            // nothing of the job is asked there
            return PromptState.DONE;
        }
        boolean skipped = model.setup().guide().skipped().contains(prompt(index).id());
        return PromptState.of(findings(index), page.begun(), skipped && !page.typed());
    }

    /**
     * Where the job goes on: the first page of the next step that is still open or stopped, else that step's first; before
     * the card always all answers.
     */
    int nextOpen() {
        int step = model.assessment().nextStep().number();
        if (step == Step.CARD.number()) {
            return first(step).orElse(0);
        }
        return IntStream.range(0, all.size())
                .filter(i -> all.get(i).step().number() == step)
                .filter(i -> prompt(i).asked() && !prompt(i).known() && needs(state(i)))
                .findFirst()
                .orElse(first(step).orElse(0));
    }

    /** Every prompt that is asked before the card, with its state and all that was answered there. */
    List<Frame.Review> review(Sentences words) {
        List<Answers.Line> answers = Answers.of(words, model.shown());
        return IntStream.range(0, all.size())
                .filter(i ->
                        prompt(i).asked() && !prompt(i).alone() && all.get(i).step() != Step.CARD)
                .mapToObj(i -> new Frame.Review(
                        all.get(i).step(),
                        prompt(i).id(),
                        state(i),
                        answers.stream()
                                .filter(line -> all.get(i).holds(line.pointer()))
                                .map(Answers.Line::text)
                                .toList(),
                        findings(i)))
                .toList();
    }

    private static boolean needs(PromptState state) {
        return state == PromptState.OPEN || state == PromptState.STOPPED;
    }
}
