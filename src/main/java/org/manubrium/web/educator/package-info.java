/**
 * The case desk's pages. Doors: {@link org.manubrium.web.educator.CasePages} and
 * {@link org.manubrium.web.educator.DraftPages}.
 */
@NullMarked
package org.manubrium.web.educator;

import org.jspecify.annotations.NullMarked;
