package org.evenfall.bench;

/**
 * A row whose work needs no thread of its own.
 *
 * @param measured what is measured
 * @param baseline what it is held against
 * @param work what is measured
 * @param bare the baseline
 */
record PlainRow(String measured, String baseline, Work work, Work bare) implements Row {

    @Override
    public Pairs measure() throws Exception {
        return Interleaved.measure(work, bare);
    }
}
