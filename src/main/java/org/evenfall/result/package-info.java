/**
 * Floor 5: the results of each step as lines of words, with label, rounding and unit, so that both faces show the same.
 * Chooses words; computes nothing.
 */
@NullMarked
package org.evenfall.result;

import org.jspecify.annotations.NullMarked;
