/** Floor 4: content and pages of the paper sheets for yard and field; drawn with the room page. */
@NullMarked
package org.evenfall.sheet;

import org.jspecify.annotations.NullMarked;
