/**
 * Entries of the wizard: labelled fields, tables, findings at their place, and the model they write into. Knows no step
 * and no step view.
 */
@NullMarked
package org.evenfall.wizard.form;

import org.jspecify.annotations.NullMarked;
