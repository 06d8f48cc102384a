/** Floor 4: what is kept on disk: the season file, the library, autosave and recovery. */
@NullMarked
package org.evenfall.store;

import org.jspecify.annotations.NullMarked;
