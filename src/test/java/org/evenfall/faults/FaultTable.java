package org.evenfall.faults;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.evenfall.store.InputFileException;

/**
 * Tries a scenario with each call failing in each way. Afterwards every file is as before or as it is without a fault;
 * nothing else is there but parts and locks; a second try without a fault does the work.
 */
final class FaultTable {

    /** What a damaged file has. */
    static final String DAMAGED = "{ \"evenfall\": 1, ";

    private final Path temp;
    private final BiFunction<String, byte[], String> content;
    private final List<String> problems = new ArrayList<>();
    private int tried;

    /** @param content what counts of a file: by its name and bytes */
    FaultTable(Path temp, BiFunction<String, byte[], String> content) {
        this.temp = temp;
        this.content = content;
    }

    FaultTable(Path temp) {
        this(temp, (name, bytes) -> new String(bytes, StandardCharsets.ISO_8859_1));
    }

    /** One line a fault that was not survived: scenario, call, way and what is wrong. */
    List<String> problems() {
        return problems;
    }

    /** Faults tried. */
    int tried() {
        return tried;
    }

    void run(FaultScenario scenario) throws Exception {
        Path usual = scenario.prepared(folder(scenario, "usual"));
        Map<String, String> before;
        Faults faults = new Faults();
        List<FileCall> calls;
        try (FaultScenario.Work work = scenario.begin().in(FaultyFileSystem.path(usual, faults))) {
            before = files(usual);
            faults.count();
            work.run();
            calls = faults.calls();
            faults.over();
        }
        Map<String, String> after = files(usual);
        if (!after.keySet().containsAll(scenario.wanted())) {
            throw new IllegalStateException(scenario.name() + " does not write " + scenario.wanted());
        }
        for (int number = 0; number < calls.size(); number++) {
            for (FaultWay way : FaultWay.values()) {
                if (way.fits(calls.get(number))) {
                    tried++;
                    String label = scenario.name() + " | " + number + " " + calls.get(number) + " | " + way;
                    for (String problem : once(scenario, number, way, before, after)) {
                        problems.add(label + " | " + problem);
                    }
                }
            }
        }
    }

    private List<String> once(
            FaultScenario scenario, int number, FaultWay way, Map<String, String> before, Map<String, String> after)
            throws Exception {
        List<String> found = new ArrayList<>();
        Path folder = scenario.prepared(folder(scenario, number + "-" + way));
        Faults faults = new Faults();
        String place;
        try (FaultScenario.Work work = scenario.begin().in(FaultyFileSystem.path(folder, faults))) {
            faults.arm(number, way);
            boolean done = attempt(work, found);
            faults.over();
            place = faults.place(number);
            compare(files(folder), before, after, done ? scenario.wanted() : List.of(), found);
            if (!done && !attempt(work, found)) {
                found.add("the second try failed as well");
            }
            Map<String, String> now = files(folder);
            scenario.wanted().stream()
                    .filter(name -> !after.get(name).equals(now.get(name)))
                    .forEach(name -> found.add(name + " is not as wanted after the second try"));
        }
        String where = folder.relativize(Path.of(place)).toString();
        return found.stream().map(problem -> where + " | " + problem).toList();
    }

    /** Whether it was done; only problems of files may be thrown. */
    private static boolean attempt(FaultScenario.Work work, List<String> found) {
        try {
            work.run();
            return true;
        } catch (IOException | InputFileException refused) {
            return false;
        } catch (Exception wrong) {
            found.add("threw " + wrong);
            return false;
        }
    }

    private static void compare(
            Map<String, String> now,
            Map<String, String> before,
            Map<String, String> after,
            Iterable<String> done,
            List<String> found) {
        TreeSet<String> names = new TreeSet<>(now.keySet());
        names.addAll(before.keySet());
        names.addAll(after.keySet());
        for (String name : names) {
            String content = now.get(name);
            boolean asBefore = content == null ? !before.containsKey(name) : content.equals(before.get(name));
            boolean asAfter = content == null ? !after.containsKey(name) : content.equals(after.get(name));
            boolean recovered = DAMAGED.equals(before.get(name))
                    && before.get(generation(name)).equals(content);
            boolean aside = name.contains(".damaged") && after.containsValue(content);
            if (!asBefore && !asAfter && !recovered && !aside) {
                found.add(name + (content == null ? " is missing" : " is neither as before nor as wanted"));
            }
        }
        for (String name : done) {
            if (!after.get(name).equals(now.get(name))) {
                found.add(name + " is not written, and nothing is reported");
            }
        }
    }

    /** Its newest generation, which may have been put in the place of a damaged file. */
    private static String generation(String name) {
        return name.replaceFirst("/([^/]*)\\.json$", "/earlier/$1.1.json");
    }

    private Path folder(FaultScenario scenario, String run) {
        return temp.resolve(scenario.name().replace(' ', '-')).resolve(run);
    }

    /** All files but parts and locks, each with what counts of it. */
    private Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                if (!name.endsWith(".part") && !name.endsWith(".lock")) {
                    files.put(
                            name, content.apply(name, Files.readAllBytes(file)).replace(folder.toString(), "FOLDER"));
                }
            }
        }
        return files;
    }
}
