/** Floor 2: the tray test: layout, catch, evenness with its interval, diagnosis, next move. */
@NullMarked
package org.evenfall.trays;

import org.jspecify.annotations.NullMarked;
