package org.evenfall.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.StepState;

/** An assessment to read: step by step, its state, its numbers, its findings. */
final class Report {

    private final CommandContext context;
    private final Sentences words;

    Report(CommandContext context) {
        this.context = context;
        this.words = context.words();
    }

    void print(Assessment assessment) {
        JsonNode json = new ResultJson(context).assessment(assessment).json();
        for (Step step : Step.values()) {
            context.out()
                    .printf(
                            locale(),
                            "%n%d  %s: %s%n",
                            step.number(),
                            words.choice(step),
                            words.choice(assessment.states().getOrDefault(step, StepState.OPEN)));
            for (Finding finding : assessment.findings()) {
                if (finding.step() == step) {
                    context.out().printf(locale(), "   %s: %s%n", words.choice(finding.kind()), words.of(finding));
                }
            }
            String part = part(step);
            if (json.get(part) instanceof ObjectNode numbers) {
                print(numbers, "   ");
            }
        }
    }

    private static String part(Step step) {
        return switch (step) {
            case START -> "machine";
            case PRODUCT -> "product";
            case MATCH -> "match";
            case MACHINE -> "yard";
            case HEIGHT -> "height";
            case RATE -> "rate";
            case TRAYS -> "trays";
            case CARD -> "card";
        };
    }

    /** Numbers under their own names, which carry the unit; at most four figures. */
    private void print(JsonNode node, String indent) {
        node.properties().forEach(entry -> {
            JsonNode value = entry.getValue();
            if (value.isNull() || (value.isContainerNode() && value.isEmpty())) {
                return;
            }
            if (value.isObject()) {
                context.out().println(indent + entry.getKey());
                print(value, indent + "  ");
            } else if (value.isArray() && value.get(0).isObject()) {
                for (int i = 0; i < value.size(); i++) {
                    context.out().println(indent + entry.getKey() + " " + (i + 1));
                    print(value.get(i), indent + "  ");
                }
            } else {
                context.out().println(indent + entry.getKey() + "  " + figures(value));
            }
        });
    }

    private String figures(JsonNode value) {
        if (value.isArray()) {
            StringBuilder list = new StringBuilder();
            value.forEach(item -> list.append(list.isEmpty() ? "" : "  ").append(figures(item)));
            return list.toString();
        }
        return value.isDouble() ? NumberFormats.significant(value.doubleValue(), 4, locale()) : value.asText();
    }

    private Locale locale() {
        return context.locale();
    }
}
