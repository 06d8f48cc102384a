import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares a saved setup with what walk.txt says was typed; run by packaging/window-test. */
final class SavedValues {

    public static void main(String[] args) throws Exception {
        JsonNode saved = new ObjectMapper().readTree(Path.of(args[1]).toFile());
        int compared = 0;
        int wrong = 0;
        for (String line : Files.readAllLines(Path.of(args[0]))) {
            String entry = line.replaceFirst("^(choose|pick \\d) ", "");
            if (entry.startsWith("/") && !entry.endsWith("=")) {
                String place = entry.substring(0, entry.indexOf(" = "));
                String typed = entry.substring(entry.indexOf(" = ") + " = ".length());
                String there = saved.at(place).asText();
                compared++;
                // the unit in use is kept behind the number
                if (!there.equals(typed) && !there.startsWith(typed + " ")) {
                    System.err.println(place + ": typed “" + typed + "”, saved “" + there + "”");
                    wrong++;
                }
            }
        }
        System.out.println(compared + " values typed, " + wrong + " not saved as typed");
        System.exit(wrong == 0 && compared > 0 ? 0 : 1);
    }
}
