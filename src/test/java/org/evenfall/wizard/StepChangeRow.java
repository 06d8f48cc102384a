package org.evenfall.wizard;

import java.util.List;
import javafx.stage.Stage;
import org.evenfall.bench.BareWindow;
import org.evenfall.bench.Pairs;
import org.evenfall.bench.Row;
import org.evenfall.bench.Work;

/** From one prompt to the next, through the steps 1 to 6: before and after them files are read and pages drawn. */
public final class StepChangeRow implements Row {

    /** About as many texts and fields as the window shows with a prompt: on the demo 24 to 84, on average 46. */
    private static final int LABELS = 50;

    @Override
    public String measured() {
        return "step change: to the next prompt of steps 1 to 6";
    }

    @Override
    public String baseline() {
        return "a bare window swaps a pane of " + LABELS + " labels";
    }

    @Override
    public Pairs measure() throws Exception {
        return DemoWindow.measure(new DemoWindow.Works() {
            @Override
            public Work work(WizardWindow window) {
                return new Round(window);
            }

            @Override
            public Work bare(Stage stage) {
                return BareWindow.swapping(stage, LABELS);
            }
        });
    }

    /** One prompt after the other; after the last comes the first. */
    private static final class Round implements Work {

        private final WizardWindow window;
        private final List<String> prompts;
        private int next;

        Round(WizardWindow window) {
            this.window = window;
            prompts = window.shell().pages().stream()
                    .filter(page -> page.step().number() >= 1 && page.step().number() <= 6)
                    .filter(page -> page.prompt().asked())
                    .map(page -> page.prompt().id())
                    .toList();
            // a page is styled the first time it is shown, which is no change of a step
            prompts.forEach(prompt -> once());
        }

        @Override
        public Object once() {
            String prompt = prompts.get(next);
            next = (next + 1) % prompts.size();
            window.shell().show(prompt);
            BareWindow.arranged(window.scene());
            if (!window.shell().prompt().equals(prompt)) {
                throw new IllegalStateException("not in front: " + prompt);
            }
            return prompt;
        }
    }
}
