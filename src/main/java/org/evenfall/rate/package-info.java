/** Floor 2: the rate: plan, flow, bucket test, next opening. */
@NullMarked
package org.evenfall.rate;

import org.jspecify.annotations.NullMarked;
