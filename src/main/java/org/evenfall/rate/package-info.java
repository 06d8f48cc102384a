/** Floor 2: the weight of product: plan, flow, bucket test, next opening. */
@NullMarked
package org.evenfall.rate;

import org.jspecify.annotations.NullMarked;
