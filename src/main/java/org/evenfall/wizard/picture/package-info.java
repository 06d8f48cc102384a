/** The live pictures of the steps: result records in, drawings out. They compute nothing of the trade. */
@NullMarked
package org.evenfall.wizard.picture;

import org.jspecify.annotations.NullMarked;
