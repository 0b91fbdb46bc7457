/** How cohorts are doing, for reviewers and educators: it shows and changes nothing. */
@NullMarked
package org.manubrium.web.review;

import org.jspecify.annotations.NullMarked;
