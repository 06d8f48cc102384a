/** Floor 5: the JavaFX face. Shows an assessment, computes nothing. */
@NullMarked
package org.evenfall.wizard;

import org.jspecify.annotations.NullMarked;
