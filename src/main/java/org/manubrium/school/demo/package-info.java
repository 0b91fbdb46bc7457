/**
 * The demo's invented school: its cases, a cohort of invented students and what they handed in, all made from a seed by
 * the same services that people use. Door: {@link org.manubrium.school.demo.Fennbrook}.
 */
@NullMarked
package org.manubrium.school.demo;

import org.jspecify.annotations.NullMarked;
