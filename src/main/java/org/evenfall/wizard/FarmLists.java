package org.evenfall.wizard;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.Setup;

/** The machines of the farm and the products tested on each, as lists. A machine begins a new setup with it. */
final class FarmLists extends FlowPane {

    private final Sentences words;
    private final SetupDocument document;
    private final VBox machines = new VBox();
    private final VBox products = new VBox();

    FarmLists(Sentences words, SetupDocument document) {
        this.words = words;
        this.document = document;
        getStyleClass().add("farm-lists");
        getChildren().addAll(machines, products);
    }

    /** Reads both lists again. */
    void refresh() {
        show(
                machines,
                "home.machines",
                "home.machinesNone",
                document.machines().all().stream().map(this::machine).toList());
        show(
                products,
                "home.testedProducts",
                "home.testedProductsNone",
                document.machines().testedProducts().stream()
                        .map(this::products)
                        .toList());
    }

    private void show(VBox list, String titleKey, String noneKey, List<Node> lines) {
        Label title = new Label(words.text(titleKey));
        title.getStyleClass().add("group-title");
        list.getChildren().setAll(title);
        list.getChildren().addAll(lines.isEmpty() ? List.of(line(words.text(noneKey))) : lines);
    }

    private Node machine(MachineEntries machine) {
        Button begin = new Button(words.text(
                "home.machine",
                Arg.text(machine.name()),
                Arg.count(machine.levers().size())));
        begin.setMnemonicParsing(false);
        begin.getStyleClass().add("lead");
        begin.setOnAction(event -> document.createNew(machine));
        return begin;
    }

    /** How many products are tested at each width. */
    private Node products(Setup ofMachine) {
        Map<String, Long> byWidth = ofMachine.match().library().stream()
                .collect(Collectors.groupingBy(
                        product -> product.width().toString(), LinkedHashMap::new, Collectors.counting()));
        String counts = byWidth.entrySet().stream()
                .map(entry -> words.text("home.forWidth", Arg.count(entry.getValue()), Arg.text(entry.getKey())))
                .collect(Collectors.joining(", "));
        return line(ofMachine.machine().name() + ": " + counts);
    }

    private static Label line(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.getStyleClass().add("sentence");
        return label;
    }
}
