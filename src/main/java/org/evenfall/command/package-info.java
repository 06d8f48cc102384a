/** Floor 5: the command-line face. Prints an assessment, computes nothing. */
@NullMarked
package org.evenfall.command;

import org.jspecify.annotations.NullMarked;
