/** The live pictures of the wizard: each takes results and draws them; none computes one. */
@NullMarked
package org.evenfall.wizard.picture;

import org.jspecify.annotations.NullMarked;
