package org.evenfall.finding;

import java.util.List;
import java.util.Objects;

/**
 * One thing that the person must or should know.
 *
 * @param kind what kind of thing it reports
 * @param step the step it belongs to
 * @param key of its sentence in the bundle, for example {@code product.caked}; also the stable code that a person can quote
 * @param args the sentence's arguments, in order
 * @param field JSON pointer of its entry in the setup file, or empty when it is about the step as a whole
 * @param source bundle key of the published source, or empty
 */
public record Finding(FindingKind kind, Step step, String key, List<Arg> args, String field, String source) {

    /** Replaces null in field and source, copies the arguments. */
    public Finding {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(step, "step");
        Objects.requireNonNull(key, "key");
        args = List.copyOf(args);
        field = Objects.requireNonNullElse(field, "");
        source = Objects.requireNonNullElse(source, "");
    }

    /** A finding that stops the job, about the step as a whole. */
    public static Finding stop(Step step, String key, Arg... args) {
        return new Finding(FindingKind.STOP, step, key, List.of(args), "", "");
    }

    /** A warning about the step as a whole. */
    public static Finding warn(Step step, String key, Arg... args) {
        return new Finding(FindingKind.WARNING, step, key, List.of(args), "", "");
    }

    /** Something that the card still needs. */
    public static Finding missing(Step step, String key, Arg... args) {
        return new Finding(FindingKind.MISSING, step, key, List.of(args), "", "");
    }

    /** A note about the step as a whole. */
    public static Finding note(Step step, String key, Arg... args) {
        return new Finding(FindingKind.NOTE, step, key, List.of(args), "", "");
    }

    /** The same finding, about one entry of the setup file. */
    public Finding at(String pointer) {
        return new Finding(kind, step, key, args, pointer, source);
    }

    /** The same finding, with the bundle key of its source. */
    public Finding from(String sourceKey) {
        return new Finding(kind, step, key, args, field, sourceKey);
    }
}
