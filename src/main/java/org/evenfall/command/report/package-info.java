/** Floor 6: an assessment as a page to read, one class a step. Sets lines and columns; computes nothing. */
@NullMarked
package org.evenfall.command.report;

import org.jspecify.annotations.NullMarked;
