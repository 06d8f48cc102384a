/** Floor 0: units, entered quantities, intervals, and how numbers are read and formatted. Uses no other room. */
@NullMarked
package org.evenfall.quantity;

import org.jspecify.annotations.NullMarked;
