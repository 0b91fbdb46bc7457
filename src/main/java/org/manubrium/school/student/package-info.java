/** What a student is set, has begun and has handed in. The door is {@link org.manubrium.school.student.StudentDesk}. */
@NullMarked
package org.manubrium.school.student;

import org.jspecify.annotations.NullMarked;
