package org.evenfall.wizard;

import java.util.List;
import javafx.concurrent.Task;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.store.FarmProblem;
import org.evenfall.wizard.form.Wrapped;

/**
 * The damaged, missing and changed files of the farm, each with the newest sound state that can be brought back. Takes no
 * room while every file is sound. The files are looked at on a thread of its own.
 */
final class FarmProblems extends VBox {

    private final Sentences words;
    private final SetupDocument document;

    FarmProblems(Sentences words, SetupDocument document) {
        this.words = words;
        this.document = document;
        getStyleClass().add("farm-problems");
        show(List.of());
    }

    /** Looks at the files again. */
    void refresh() {
        Task<List<FarmProblem>> task = new Task<>() {
            @Override
            protected List<FarmProblem> call() {
                return document.problems();
            }
        };
        task.setOnSucceeded(event -> show(task.getValue()));
        task.setOnFailed(event -> document.frame().showNotice(words.text("farm.notChecked")));
        Thread thread = new Thread(task, "evenfall-farm-check");
        thread.setDaemon(true);
        thread.start();
    }

    private void show(List<FarmProblem> problems) {
        getChildren().setAll(problems.stream().map(this::line).toList());
        setVisible(!problems.isEmpty());
        setManaged(!problems.isEmpty());
    }

    private Node line(FarmProblem problem) {
        VBox line = new VBox(Wrapped.label(
                words.text("farm." + problem.what(), Arg.text(document.fileName(problem.file()))), "warning"));
        problem.soundSince().ifPresent(since -> {
            Button back = new Button(words.text("farm.bringBack", Arg.text(document.time(since))));
            back.setId("farm.bringBack");
            back.setOnAction(event -> {
                document.recover(problem.file());
                refresh();
            });
            line.getChildren().addAll(back, Wrapped.label(words.text("farm.later"), "beneath"));
        });
        return line;
    }
}
