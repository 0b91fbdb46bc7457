/**
 * Marks an attempt against a frozen key. The door is {@link org.manubrium.marking.Marker}: a pure function of key,
 * convention, weights and events. {@code event} holds what students do, {@code key} what is right, {@code credit} the rule
 * for each kind of answer, {@code convention} what schools teach differently, {@code compile} makes the key from a body.
 */
@NullMarked
package org.manubrium.marking;

import org.jspecify.annotations.NullMarked;
