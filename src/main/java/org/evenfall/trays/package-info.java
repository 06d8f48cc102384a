/**
 * Floor 2, the tray test: layout, catch, evenness with its interval, diagnosis, next move. Plain results, no findings and no
 * sentences.
 */
@NullMarked
package org.evenfall.trays;

import org.jspecify.annotations.NullMarked;
