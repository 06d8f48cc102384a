/** Prompts of a step of the guide: each asks one thing. */
@NullMarked
package org.evenfall.wizard.step.rate;

import org.jspecify.annotations.NullMarked;
