package org.evenfall.publish;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.report.ReportContent.Block;
import org.evenfall.report.ReportContent.Pair;
import org.evenfall.result.ResultSource;
import org.evenfall.setup.Assessment;

/** Where limits and models come from: each source once, with a number and with what rests on it. */
final class ReportSources {

    private final Sentences words;

    /** Text of each source with what rests on it, in the order of their numbers. */
    private final Map<String, List<String>> restOn = new LinkedHashMap<>();

    /** The sources of all results, then those of findings that no result has. */
    ReportSources(Assessment assessment, Sentences words) {
        this.words = words;
        for (ResultSource result : ResultSource.of(assessment)) {
            add(result.source(), words.choice(result));
        }
        for (Finding finding : assessment.findings()) {
            if (!finding.source().isEmpty() && !restOn.containsKey(words.text(finding.source()))) {
                add(finding.source(), words.choice(finding.step()));
            }
        }
    }

    private void add(String sourceKey, String what) {
        List<String> all = restOn.computeIfAbsent(words.text(sourceKey), fresh -> new ArrayList<>());
        if (!all.contains(what)) {
            all.add(what);
        }
    }

    /** The sentence of a finding with the number of its source. */
    String sentence(Finding finding) {
        return finding.source().isEmpty()
                ? words.of(finding)
                : words.of(finding) + "\u00a0" + mark(words.text(finding.source()));
    }

    private String mark(String source) {
        return "[" + (new ArrayList<>(restOn.keySet()).indexOf(source) + 1) + "]";
    }

    /** All of them. */
    List<Block> blocks() {
        return restOn.entrySet().stream()
                .<Block>map(source -> new Pair(
                        mark(source.getKey()) + "\u00a0" + String.join(", ", source.getValue()), source.getKey()))
                .toList();
    }
}
