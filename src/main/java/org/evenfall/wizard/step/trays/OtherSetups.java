package org.evenfall.wizard.step.trays;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.evenfall.setup.Assessment;

/** Setups of the farm to compare with. */
public interface OtherSetups {

    /** Their files, newest first. */
    List<Path> files();

    /** What one is called in a list. */
    String name(Path file);

    /** One assessed; empty, with a notice, when it cannot be read. */
    Optional<Assessment> assessed(Path file);
}
