/**
 * The door for browsers. {@link org.manubrium.web.Routes} lists every address with who may use it;
 * {@link org.manubrium.web.WebServer} listens. Features are in packages of their own and take what they need by
 * constructor.
 */
@NullMarked
package org.manubrium.web;

import org.jspecify.annotations.NullMarked;
