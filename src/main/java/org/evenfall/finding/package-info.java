/** Floor 0: findings as keys with arguments; the sentences are in the bundles. */
@NullMarked
package org.evenfall.finding;

import org.jspecify.annotations.NullMarked;
