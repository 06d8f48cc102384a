/** Floor 4: content and pages of the report for the farm's records; drawn with the room page. */
@NullMarked
package org.evenfall.report;

import org.jspecify.annotations.NullMarked;
