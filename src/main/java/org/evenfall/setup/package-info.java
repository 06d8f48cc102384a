/** Floor 3: one product on one machine for one season: entries in, one immutable assessment out. */
@NullMarked
package org.evenfall.setup;

import org.jspecify.annotations.NullMarked;
