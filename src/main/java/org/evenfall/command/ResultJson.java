package org.evenfall.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.evenfall.command.SetupInputs.Answer;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.result.ResultSource;
import org.evenfall.setup.AdviceFindings;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Rechecked;
import org.evenfall.trays.Advice;
import org.evenfall.trays.ExpectedCv;
import org.jspecify.annotations.Nullable;

/** An assessment as JSON: every number under its own name with its unit, every finding with its sentence. */
final class ResultJson {

    private final CommandContext context;
    private final ObjectMapper mapper;

    ResultJson(CommandContext context) {
        this.context = context;
        this.mapper = PublishedNames.mapper();
    }

    Answer assessment(Assessment assessment) {
        ObjectNode json = mapper.createObjectNode();
        json.set("states", tree(assessment.states()));
        json.set("machine", tree(assessment.machine()));
        json.set("tramlineWidthM", tree(assessment.tramlineWidthM()));
        json.set("product", product(assessment));
        json.set("match", tree(assessment.match()));
        json.set("yard", tree(assessment.machineCheck()));
        json.set("height", tree(assessment.height()));
        json.set("rate", tree(assessment.rate()));
        ObjectNode trays = json.putObject("trays");
        trays.set("layout", tree(assessment.trays().layout()));
        trays.set("plan", tree(assessment.trays().plan()));
        trays.set("strip", tree(assessment.trays().strip()));
        trays.set("tests", tree(assessment.trays().tests()));
        trays.set("comparisons", tree(assessment.trays().comparisons()));
        trays.set("loss", tree(assessment.trays().loss()));
        trays.set("advice", advice(assessment.trays().advice()));
        trays.set("line", tree(assessment.trays().line()));
        json.set("card", tree(assessment.card()));
        json.set("rechecked", tree(Rechecked.of(assessment)));
        json.set("log", tree(assessment.log()));
        json.set("findings", findings(assessment.findings()));
        json.set("sources", sources(assessment, ""));
        return new Answer(json, code(assessment));
    }

    /** The product; each published band with the text of its source. */
    private JsonNode product(Assessment assessment) {
        JsonNode json = tree(assessment.product());
        for (JsonNode band : json.path("bands")) {
            ((ObjectNode) band).put("source", text(band.path("sourceKey").textValue()));
        }
        return json;
    }

    /**
     * What each limit and each figure of a model rests on, by the place of the result.
     *
     * @param start only results whose place starts so
     */
    ObjectNode sources(Assessment assessment, String start) {
        ObjectNode json = mapper.createObjectNode();
        ResultSource.of(assessment).stream()
                .filter(one -> one.result().startsWith(start))
                .forEach(one -> json.put(one.result(), text(one.source())));
        return json;
    }

    private String text(String key) {
        return context.words().text(key).replace('\u00a0', ' ');
    }

    static int code(Assessment assessment) {
        return assessment.findings().stream().anyMatch(finding -> finding.kind() == FindingKind.STOP)
                ? CommandFace.FOUND
                : CommandFace.OK;
    }

    /** The next move with its reasons in words; null while there is none. */
    JsonNode advice(@Nullable Advice advice) {
        if (advice == null) {
            return NullNode.instance;
        }
        ObjectNode json = mapper.createObjectNode();
        json.put("kind", advice.kind().name());
        json.set("moves", tree(advice.moves()));
        expected(json, "expectedCv", advice.expected());
        expected(json, "expectedFieldCv", advice.expectedField());
        json.set("reasons", findings(AdviceFindings.of(advice)));
        json.put("probe", advice.probe());
        json.put("back", advice.back());
        json.set("moreRuns", tree(advice.moreRuns()));
        json.set("leaveBlank", tree(advice.leaveBlank()));
        json.put("lever", advice.lever());
        return json;
    }

    private void expected(ObjectNode json, String name, @Nullable ExpectedCv cv) {
        json.set(name + "Percent", tree(cv == null ? null : cv.percent()));
        json.set(
                name + "LowPercent",
                tree(cv == null ? null : cv.intervalPercent().low()));
        json.set(
                name + "HighPercent",
                tree(cv == null ? null : cv.intervalPercent().high()));
    }

    ArrayNode findings(List<Finding> findings) {
        ArrayNode list = mapper.createArrayNode();
        for (Finding finding : findings) {
            ObjectNode json = list.addObject();
            json.put("severity", publishedSeverity(finding.kind()));
            json.put("kind", finding.kind().name());
            json.put("step", finding.step().name());
            json.put("key", finding.key());
            json.put("field", finding.field());
            json.put("message", context.words().of(finding).replace('\u00a0', ' '));
            json.put("source", finding.source().isEmpty() ? "" : text(finding.source()));
            ArrayNode args = json.putArray("args");
            for (Arg arg : finding.args()) {
                if (arg instanceof Arg.Figure figure) {
                    args.addObject()
                            .put("value", figure.value())
                            .put("unit", figure.unit().symbol());
                } else {
                    args.add(context.words().word(arg));
                }
            }
        }
        return list;
    }

    /** Prints a result of figures: as JSON, or a line for each figure with four decimals. */
    static void print(CommandContext context, boolean json, Object result) throws JsonProcessingException {
        if (json) {
            context.out().println(context.json().mapper().writeValueAsString(result));
            return;
        }
        new ResultJson(context)
                .tree(result)
                .properties()
                .forEach(entry -> context.out()
                        .printf(
                                context.locale(),
                                "%s  %.4f%n",
                                entry.getKey(),
                                entry.getValue().doubleValue()));
    }

    /** Records become trees by their components' names; what has no finite value becomes null. */
    JsonNode tree(@Nullable Object value) {
        return finite(mapper.valueToTree(value));
    }

    private static JsonNode finite(JsonNode node) {
        if (node instanceof DoubleNode number && !Double.isFinite(number.doubleValue())) {
            return NullNode.instance;
        }
        if (node instanceof ObjectNode object) {
            object.properties().forEach(entry -> entry.setValue(finite(entry.getValue())));
        }
        if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                list.set(i, finite(list.get(i)));
            }
        }
        return node;
    }

    /** The three words that were published before findings had kinds; what is missing was a note. */
    private static String publishedSeverity(FindingKind kind) {
        return switch (kind) {
            case STOP -> "STOP";
            case WARNING -> "WARN";
            case MISSING, NOTE -> "NOTE";
        };
    }
}
