/** Today's signs: chosen, asked, answered, explained. The door is {@link org.manubrium.school.drill.DrillDesk}. */
@NullMarked
package org.manubrium.school.drill;

import org.jspecify.annotations.NullMarked;
