/** Floor 1: drag, ballistic flight, the vane on the disc, the landing pattern. Models, and called so. */
@NullMarked
package org.evenfall.flight;

import org.jspecify.annotations.NullMarked;
