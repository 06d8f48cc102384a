/** Floor 1: the broadcaster: profile, levers, opening table, machine check, height above the crop canopy. */
@NullMarked
package org.evenfall.machine;

import org.jspecify.annotations.NullMarked;
