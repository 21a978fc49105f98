/**
 * Rules that command line and window share as programs: where the casebook lies, how the project's markets and
 * pictures are read.
 */
package worthsaving.shell;
