package org.evenfall.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.evenfall.quantity.PlainText;
import org.evenfall.quantity.Quoted;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;
import org.evenfall.store.InputText;
import org.jspecify.annotations.Nullable;

/** One result line for each setup, from files or from standard input. */
final class SetupInputs {

    private SetupInputs() {}

    static Setup read(CommandContext context, String file) throws InputFileException {
        Path path = context.path(file);
        return context.json().read(InputText.read(path, path.toString()), path.toString());
    }

    /**
     * One setup a line on standard input, one result line flushed at once for each, until the end of input or until nothing
     * more can be written. Whatever is in a line, the next is answered too.
     */
    static int stream(CommandContext context, Function<Setup, Answer> work) throws IOException {
        StreamLines lines = new StreamLines(context.in());
        int worst = CommandFace.OK;
        int number = 0;
        for (byte[] line = lines.next(); line != null; line = lines.next()) {
            number++;
            Answer answer = answer(context, line, number, work);
            if (answer == null) {
                continue;
            }
            worst = Math.max(worst, answer.code());
            context.out().println(text(context, answer.json()));
            if (context.out().checkError()) {
                return CommandFace.WRONG;
            }
        }
        return worst;
    }

    /** The answer to one line; null for a blank one. */
    private static @Nullable Answer answer(
            CommandContext context, byte[] bytes, int number, Function<Setup, Answer> work) {
        String name = "line " + number;
        try {
            String line = InputText.decode(bytes, name);
            return line.isBlank() ? null : work.apply(context.json().read(line, name));
        } catch (InputFileException problem) {
            return refused(context, problem.problem(), problem.place(), number);
        } catch (RuntimeException | StackOverflowError trouble) {
            return refused(context, Trouble.line(trouble), "", number);
        }
    }

    private static Answer refused(CommandContext context, String problem, String place, int number) {
        ObjectNode answer = context.json().mapper().createObjectNode();
        answer.put("error", problem);
        answer.put("pointer", PlainText.oneLine(place, Quoted.MOST_IN_MESSAGE));
        answer.put("line", number);
        return new Answer(answer, CommandFace.WRONG);
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
            if (context.out().checkError()) {
                return CommandFace.WRONG;
            }
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
