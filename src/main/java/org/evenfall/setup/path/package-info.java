/**
 * What each entry of a setup is, in one constant an entry: where it is (JSON pointer, getter, wither), its units, its
 * possible and usual range, the key of its label, and whether the card needs it. Reading, findings, the schema check and
 * the fields on the screen follow from these constants; no pointer, limit or label key of an entry is written elsewhere.
 */
@NullMarked
package org.evenfall.setup.path;

import org.jspecify.annotations.NullMarked;
