package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.ArrayList;
import java.util.List;

/**
 * What the guide keeps of the person's way through it; no result depends on it.
 *
 * @param skipped ids of the prompts that the person goes on without, for example 1g
 * @param cautionsRead ids of the prompts whose cautions were read
 * @param invented an invented example, such as the demo: its machine and products are kept nowhere else
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record GuideEntries(List<String> skipped, List<String> cautionsRead, YesNo invented, UnknownKeys unknownKeys)
        implements GuideEntriesBuilder.With {

    /** Nothing skipped, nothing read. */
    public static final GuideEntries EMPTY = Blank.of(GuideEntries.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public GuideEntries {
        skipped = List.copyOf(skipped);
        cautionsRead = List.copyOf(cautionsRead);
    }

    /** Whether it is an invented example. */
    public boolean isInvented() {
        return invented == YesNo.YES;
    }

    /** The same with a prompt skipped, or asked again. */
    public GuideEntries withSkipped(String prompt, boolean skip) {
        List<String> now = new ArrayList<>(skipped);
        now.remove(prompt);
        if (skip) {
            now.add(prompt);
        }
        return withSkipped(now);
    }

    /** The same with the cautions of a prompt read. */
    public GuideEntries withCautionRead(String prompt) {
        List<String> now = new ArrayList<>(cautionsRead);
        now.remove(prompt);
        now.add(prompt);
        return withCautionsRead(now);
    }
}
