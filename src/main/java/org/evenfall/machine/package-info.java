/** Floor 1: the broadcaster: profile, levers, opening table, yard check, height over the crop. */
@NullMarked
package org.evenfall.machine;

import org.jspecify.annotations.NullMarked;
