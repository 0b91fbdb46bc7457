/**
 * The command line. Door: {@link org.manubrium.cli.CommandLine}, which finds the {@link org.manubrium.cli.Command} that
 * was named, reads its options and turns what happens into an exit code.
 */
@NullMarked
package org.manubrium.cli;

import org.jspecify.annotations.NullMarked;
