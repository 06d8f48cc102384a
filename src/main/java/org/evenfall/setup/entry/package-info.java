/** Exactly what was typed, step by step, each value in its own unit. Nothing here is read as a number. */
@NullMarked
package org.evenfall.setup.entry;

import org.jspecify.annotations.NullMarked;
