/** Calculators that are offered by themselves, without a setup: a flight, a single pass, a tray plan. */
@NullMarked
package org.evenfall.setup.tool;

import org.jspecify.annotations.NullMarked;
