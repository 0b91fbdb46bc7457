/**
 * What every page and every answer has in common: who is asking, may they, how a page is drawn, how a fault is said,
 * which headers go out. Knows nothing of any feature. Doors: {@link org.manubrium.web.shell.Shell} for the server,
 * {@link org.manubrium.web.shell.Visitor} and {@link org.manubrium.web.shell.View} for pages.
 */
@NullMarked
package org.manubrium.web.shell;

import org.jspecify.annotations.NullMarked;
