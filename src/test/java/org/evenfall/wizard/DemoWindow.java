package org.evenfall.wizard;

import javafx.application.Platform;
import javafx.stage.Stage;
import org.evenfall.bench.BareWindow;
import org.evenfall.bench.FxThread;
import org.evenfall.bench.Interleaved;
import org.evenfall.bench.Pairs;
import org.evenfall.bench.Work;

/** Measures a window on the demo against a bare one, both shown; closes both. */
final class DemoWindow {

    private final Stage stage = new Stage();
    private final Stage bareStage = new Stage();
    private final WizardWindow window;

    private DemoWindow() throws Exception {
        window = SharedWindow.make().show(stage, BareWindow.WIDTH, BareWindow.HEIGHT);
    }

    /** What is done in the window and in the bare one; made on the thread of the windows. */
    interface Works {

        Work work(WizardWindow window) throws Exception;

        /** Made after the other. */
        Work bare(Stage stage) throws Exception;
    }

    static Pairs measure(Works works) throws Exception {
        DemoWindow demo = FxThread.call(DemoWindow::new);
        try {
            Work work = FxThread.call(() -> works.work(demo.window));
            Work bare = FxThread.call(() -> works.bare(demo.bareStage));
            return Interleaved.measure(work, bare, Platform::runLater);
        } finally {
            FxThread.call(demo::closed);
        }
    }

    private Object closed() {
        window.close();
        stage.hide();
        bareStage.hide();
        return stage;
    }
}
