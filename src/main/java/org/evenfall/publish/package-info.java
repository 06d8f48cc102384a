/** Floor 5: makes, signs, writes and verifies what leaves the program; joins the rooms of floor 4 for both faces. */
@NullMarked
package org.evenfall.publish;

import org.jspecify.annotations.NullMarked;
