/** Exactly what the person typed, step by step, each value in the unit in which it was typed. */
@NullMarked
package org.evenfall.setup.entry;

import org.jspecify.annotations.NullMarked;
