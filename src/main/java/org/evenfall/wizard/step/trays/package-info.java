/** Prompts of a step of the guide: each asks one thing. */
@NullMarked
package org.evenfall.wizard.step.trays;

import org.jspecify.annotations.NullMarked;
