package org.evenfall.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;
import org.evenfall.store.SetupStore;

/** One result line for each setup, from files or from standard input. */
final class SetupInputs {

    private SetupInputs() {}

    static Setup read(CommandContext context, String file) throws InputFileException {
        return new SetupStore(context.json()).read(context.path(file));
    }

    /** One setup a line on standard input, one result line flushed at once for each, until the end of input. */
    static int stream(CommandContext context, Function<Setup, Answer> work) throws IOException {
        BufferedReader lines = new BufferedReader(new InputStreamReader(context.in(), StandardCharsets.UTF_8));
        int worst = CommandFace.OK;
        int number = 0;
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            try {
                Answer answer = work.apply(context.json().read(line, "line " + number));
                worst = Math.max(worst, answer.code());
                context.out().println(text(context, answer.json()));
            } catch (InputFileException problem) {
                worst = CommandFace.WRONG;
                ObjectNode answer = context.json().mapper().createObjectNode();
                answer.put("error", problem.problem());
                answer.put("pointer", problem.place());
                answer.put("line", number);
                context.out().println(text(context, answer));
            }
            context.out().flush();
        }
        return worst;
    }

    /** Many files: one line of JSON for each. All are read before the first is answered. */
    static int lines(CommandContext context, List<String> files, Function<Setup, Answer> work)
            throws InputFileException, IOException {
        List<Setup> setups = new ArrayList<>();
        for (String file : files) {
            setups.add(read(context, file));
        }
        int worst = CommandFace.OK;
        for (int i = 0; i < setups.size(); i++) {
            Answer answer = work.apply(setups.get(i));
            worst = Math.max(worst, answer.code());
            answer.json().put("file", files.get(i));
            context.out().println(text(context, answer.json()));
        }
        return worst;
    }

    static String text(CommandContext context, ObjectNode json) throws JsonProcessingException {
        return context.json().mapper().writeValueAsString(json);
    }

    /**
     * A result with its exit code.
     *
     * @param json the result
     * @param code exit code
     */
    record Answer(ObjectNode json, int code) {}
}
