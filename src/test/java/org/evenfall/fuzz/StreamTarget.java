package org.evenfall.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.evenfall.command.Commands;

/** The command {@code assess --stream}: one JSON object for each line that is not blank, and none of them is a crash. */
final class StreamTarget {

    private static final ObjectMapper READER = new ObjectMapper();

    /** Whatever is thrown inside the program is shown in one of these ways. */
    private static final List<String> CRASHES =
            List.of("fault of the program", "too little memory", "nested too deeply", "reading or writing failed");

    private StreamTarget() {}

    static void take(byte[] input) throws IOException {
        Commands.Answer answer = new Commands(Path.of("no-folder")).runWith(input, "assess", "--stream");
        Targets.require(answer.err().isEmpty(), answer.err());
        List<String> answers = answer.out().lines().toList();
        long lines = new String(input, StandardCharsets.ISO_8859_1)
                .lines()
                .filter(line ->
                        !new String(line.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8).isBlank())
                .count();
        Targets.require(answers.size() == lines, answers.size() + " answers for " + lines + " lines");
        boolean refused = false;
        for (String line : answers) {
            JsonNode json = READER.readTree(line);
            Targets.require(json.isObject(), line);
            String error = json.path("error").asText();
            refused |= json.has("error");
            Targets.require(CRASHES.stream().noneMatch(error::contains), line);
        }
        Targets.require(refused ? answer.code() == 2 : answer.code() < 2, "exit code " + answer.code());
    }
}
