/** Floor 4: what is read from and written to disk: setup files, tables of tested products and of trays, the user folder. */
@NullMarked
package org.evenfall.store;

import org.jspecify.annotations.NullMarked;
