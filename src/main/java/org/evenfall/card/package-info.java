/** Floor 4: content and faces of the cab card; drawn with the room page. */
@NullMarked
package org.evenfall.card;

import org.jspecify.annotations.NullMarked;
