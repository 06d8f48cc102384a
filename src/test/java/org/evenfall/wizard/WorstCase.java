package org.evenfall.wizard;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;

/** The second demo, made as full as a setup can be: long names, many rows, every answer given, much to be found. */
final class WorstCase {

    /** As long as a name gets. */
    private static final String LONG = "Heron Corner behind the old railway embankment, northern half";

    private static final Map<String, String> NAMES = Map.of(
            "long vane", "long vane, outer hole row",
            "short vane", "short vane, inner hole row");

    /** Entries that cannot be read or are out of range. */
    private static final Map<String, String> WRONG = Map.ofEntries(
            Map.entry("/machine/ptoLowest", "five hundred"),
            Map.entry("/machine/wantedHeight", "1,250"),
            Map.entry("/product/bagsSampled", "1"),
            Map.entry("/product/useBy", "3/4/27"),
            Map.entry("/yard/heightLeft", "38 in"),
            Map.entry("/yard/tyreRight", "0,4 bar"),
            Map.entry("/yard/ptoMeasured", "455 rpm"),
            Map.entry("/yard/vanes/0/length", "295 mm"),
            Map.entry("/yard/vanes/1/length", "long"),
            Map.entry("/height/growth", "a hand"),
            Map.entry("/height/front", "55 in"),
            Map.entry("/height/chainPoint", "900 m"),
            Map.entry("/rate/plan/area", "1,250 ac"));

    private static final List<String> LONG_TEXTS = List.of(
            "/start/farm",
            "/start/field",
            "/start/crop",
            "/machine/name",
            "/machine/handbook",
            "/machine/referencePoint",
            "/product/name",
            "/product/inhibitor",
            "/product/delivery",
            "/yard/ptoInstrument",
            "/height/referencePoint",
            "/card/measuredBy",
            "/card/signedBy",
            "/card/role",
            "/card/remarks");

    /** Lists and how many rows they get. */
    private static final Map<String, Integer> ROWS = Map.of(
            "/machine/levers", 6,
            "/machine/workingWidths", 6,
            "/machine/openings", 14,
            "/product/containerFull", 10,
            "/product/sievings", 4,
            "/match/library", 12,
            "/yard/vanes", 8,
            "/height/cropHeights", 15,
            "/rate/speedRuns", 6,
            "/rate/bucketTests", 4);

    /** Passes in the log, and the fields they are on. */
    private static final int PASSES = 9;

    private static final int FIELDS = 7;

    private WorstCase() {}

    /** The setup. */
    static Setup setup() throws Exception {
        SetupJson json = new SetupJson();
        String text = Files.readString(Path.of("demo", "uneven.json"));
        for (Map.Entry<String, String> name : NAMES.entrySet()) {
            text = text.replace(name.getKey(), name.getValue());
        }
        ObjectNode root = (ObjectNode) json.mapper().readTree(text);
        ROWS.forEach((list, rows) -> lengthen((ArrayNode) root.at(list), rows));
        ArrayNode passes = root.putObject("log").putArray("passes");
        for (int i = 0; i < PASSES; i++) {
            passes.addObject()
                    .put("date", i == 1 ? "3/4/27" : "2027-03-1" + i)
                    .put("field", LONG + " " + i % FIELDS)
                    .put("area", i == 2 ? "many ha" : "1" + i + ".25 ha")
                    .put("productDrawn", "12" + i + "75 kg")
                    .put("note", LONG);
        }
        LONG_TEXTS.forEach(place -> put(root, place, LONG));
        WRONG.forEach((place, value) -> put(root, place, value));
        for (JsonNode check : root.at("/yard/checks")) {
            if (!check.get("item").asText().equals("GUARDS")) {
                ((ObjectNode) check).put("answer", "FAILED");
            }
        }
        return json.read(json.mapper().writeValueAsString(root), "worst case");
    }

    /** Repeats the rows until there are so many; names and labels stay different. */
    private static void lengthen(ArrayNode list, int rows) {
        int first = list.size();
        for (int i = first; i < rows; i++) {
            JsonNode row = list.get(i % first).deepCopy();
            for (String name : List.of("id", "label")) {
                if (row.has(name)) {
                    ((ObjectNode) row).put(name, row.get(name).asText() + " " + (i / first + 1));
                }
            }
            list.add(row);
        }
    }

    private static void put(ObjectNode root, String place, String value) {
        int name = place.lastIndexOf('/');
        JsonNode parent = root.at(place.substring(0, name));
        if (parent instanceof ArrayNode list) {
            list.set(Integer.parseInt(place.substring(name + 1)), value);
        } else {
            ((ObjectNode) parent).put(place.substring(name + 1), value);
        }
    }
}
