/** Floor 0: units, what a person typed, and how numbers are read and written. Knows no other room. */
@NullMarked
package org.evenfall.quantity;

import org.jspecify.annotations.NullMarked;
