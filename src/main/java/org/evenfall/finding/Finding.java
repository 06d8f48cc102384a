package org.evenfall.finding;

import java.util.List;
import java.util.Objects;

/**
 * One thing that the person must or should know.
 *
 * @param severity how serious it is
 * @param step the step it belongs to
 * @param key of its sentence in the bundle, for example {@code product.caked}; also the stable code that a person can quote
 * @param args the sentence's arguments, in order
 * @param field JSON pointer of its entry in the setup file, or empty when it is about the step as a whole
 * @param source bundle key of the published source, or empty
 */
public record Finding(Severity severity, Step step, String key, List<Arg> args, String field, String source) {

    /** Replaces null in field and source, copies the arguments. */
    public Finding {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(step, "step");
        Objects.requireNonNull(key, "key");
        args = List.copyOf(args);
        field = Objects.requireNonNullElse(field, "");
        source = Objects.requireNonNullElse(source, "");
    }

    /** A finding that stops the job, about the step as a whole. */
    public static Finding stop(Step step, String key, Arg... args) {
        return new Finding(Severity.STOP, step, key, List.of(args), "", "");
    }

    /** A warning about the step as a whole. */
    public static Finding warn(Step step, String key, Arg... args) {
        return new Finding(Severity.WARN, step, key, List.of(args), "", "");
    }

    /** Something that the card still needs. */
    public static Finding missing(Step step, String key, Arg... args) {
        return new Finding(Severity.MISSING, step, key, List.of(args), "", "");
    }

    /** A note about the step as a whole. */
    public static Finding note(Step step, String key, Arg... args) {
        return new Finding(Severity.NOTE, step, key, List.of(args), "", "");
    }

    /** The same finding, about one entry of the setup file. */
    public Finding at(String pointer) {
        return new Finding(severity, step, key, args, pointer, source);
    }

    /** The same finding, with the bundle key of its source. */
    public Finding from(String sourceKey) {
        return new Finding(severity, step, key, args, field, sourceKey);
    }
}
