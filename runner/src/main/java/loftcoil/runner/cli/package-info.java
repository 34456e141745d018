/**
 * The command line: arguments in, one of the faces out, and the exit status. The only room that ends the process.
 */
@NullMarked
package loftcoil.runner.cli;

import org.jspecify.annotations.NullMarked;
