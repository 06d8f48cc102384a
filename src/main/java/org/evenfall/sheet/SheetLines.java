package org.evenfall.sheet;

import java.util.List;

/**
 * Results in words that the sheets show as they are shown elsewhere.
 *
 * @param kit what to bring, one line a thing
 * @param bucket what to expect in the bucket; empty where it is not known
 * @param firstMove heading and sentences of the first move; empty where it cannot be computed
 * @param foot which setup, which revision, when printed
 */
public record SheetLines(List<String> kit, List<String> bucket, List<String> firstMove, String foot) {
    /** Copies the lists. */
    public SheetLines {
        kit = List.copyOf(kit);
        bucket = List.copyOf(bucket);
        firstMove = List.copyOf(firstMove);
    }
}
