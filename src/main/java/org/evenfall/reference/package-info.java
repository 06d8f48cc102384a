/** Floor 2: products tested on this machine and which of them would land most like the new one. */
@NullMarked
package org.evenfall.reference;

import org.jspecify.annotations.NullMarked;
