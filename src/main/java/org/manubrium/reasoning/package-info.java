/**
 * What a finding does to a differential. A {@link org.manubrium.reasoning.Weighing} is frozen with a case version: each
 * possible diagnosis is a weighted set of concrete bodies, and each step of the examination has one outcome in each body.
 * {@link org.manubrium.reasoning.Evidence} prepares it; {@link org.manubrium.reasoning.Belief} is what is thought after
 * some steps.
 */
@NullMarked
package org.manubrium.reasoning;

import org.jspecify.annotations.NullMarked;
