/** Floor 1: the product as a heap of granules: bulk density, sieve classes, size distribution, apparent density. */
@NullMarked
package org.evenfall.granule;

import org.jspecify.annotations.NullMarked;
