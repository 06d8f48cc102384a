package org.evenfall.wizard.step.card;

import java.nio.file.Path;
import java.time.LocalDate;
import org.evenfall.setup.entry.Setup;

/**
 * A card that was signed while this window is open.
 *
 * @param file where it was written
 * @param keyCode short code of the key
 * @param day when
 * @param setup what it was made from
 */
public record SignedCard(Path file, String keyCode, LocalDate day, Setup setup) {}
