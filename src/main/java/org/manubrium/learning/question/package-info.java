/**
 * Short questions made from the body model. The door is {@link org.manubrium.learning.question.QuestionMaker}: it names the
 * facts that can be asked, and makes a question of one. What is right, and that nothing else is, follows from the model.
 */
@NullMarked
package org.manubrium.learning.question;

import org.jspecify.annotations.NullMarked;
