/** Floor 4: signing keys, signatures in PDF files and their verification. Knows neither card nor store. */
@NullMarked
package org.evenfall.sign;

import org.jspecify.annotations.NullMarked;
