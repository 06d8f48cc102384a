package org.evenfall.wizard;

import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.evenfall.bench.BareWindow;
import org.evenfall.bench.Pairs;
import org.evenfall.bench.Row;
import org.evenfall.bench.Work;
import org.evenfall.setup.Assessment;

/** One digit of a catch typed, until everything that follows from it is assessed and shown. */
public final class KeyEchoRow implements Row {

    private static final String PROMPT = "6c";
    private static final String FIELD = "/trays/tests/1/catches/0";

    @Override
    public String measured() {
        return "key echo: a digit of a catch typed, assessed, laid out";
    }

    @Override
    public String baseline() {
        return "a digit typed in a text field of a bare window";
    }

    @Override
    public Pairs measure() throws Exception {
        return DemoWindow.measure(new DemoWindow.Works() {
            @Override
            public Work work(WizardWindow window) {
                return typing(window);
            }

            @Override
            public Work bare(Stage stage) {
                return BareWindow.typing(stage);
            }
        });
    }

    private static Work typing(WizardWindow window) {
        window.shell().show(PROMPT);
        BareWindow.arranged(window.scene());
        Node node =
                Nodes.find(window.shell(), each -> FIELD.equals(each.getId())).orElseThrow();
        TextField field = (TextField) node;
        field.requestFocus();
        Work key = BareWindow.overDigit(window.scene(), field);
        return () -> {
            Assessment before = window.model().assessment();
            key.once();
            // by identity: to compare the figures would take time
            if (window.model().assessment() == before) {
                throw new IllegalStateException("not assessed: " + field.getText());
            }
            return window.model().assessment();
        };
    }
}
