/**
 * The invented patient: a person, what ails them, and the body that follows. {@link org.manubrium.patient.Body} answers
 * what a site still lets pass and what a quantity stands at; {@link org.manubrium.patient.sign.Signs} reads it.
 */
@NullMarked
package org.manubrium.patient;

import org.jspecify.annotations.NullMarked;
