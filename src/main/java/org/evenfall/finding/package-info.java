/** Floor 0: one thing to tell the person, as a key with arguments; the sentences live in the bundles. */
@NullMarked
package org.evenfall.finding;

import org.jspecify.annotations.NullMarked;
