package org.evenfall.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.evenfall.command.Commands;

/** A line of the command {@code assess --stream}, from its text to the text of its answer. */
final class StreamRow implements Row {

    /** In one call, so that its start hardly counts. */
    private static final int LINES = 20;

    @Override
    public String measured() {
        return "assess stream: one line, " + Demo.NAME;
    }

    @Override
    public String baseline() {
        return "Jackson reads the same line into a tree";
    }

    @Override
    public Pairs measure() throws Exception {
        ObjectMapper reader = new ObjectMapper();
        String line = reader.readTree(Demo.text()).toString();
        String lines = (line + "\n").repeat(LINES);
        Commands commands = new Commands(Path.of("target", "bench"));
        return Interleaved.measure(
                        () -> answered(commands.runWith(lines, "assess", "--stream")), () -> trees(reader, line))
                .each(LINES);
    }

    private static Commands.Answer answered(Commands.Answer answer) {
        if (answer.code() != 0 || answer.out().lines().count() != LINES) {
            throw new IllegalStateException(answer.code() + " " + answer.out() + answer.err());
        }
        return answer;
    }

    private static JsonNode[] trees(ObjectMapper reader, String line) throws Exception {
        JsonNode[] trees = new JsonNode[LINES];
        for (int i = 0; i < LINES; i++) {
            trees[i] = reader.readTree(line);
        }
        return trees;
    }
}
