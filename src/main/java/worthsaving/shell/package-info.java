/** Rules that the command line and the window share as programs: where the user's casebook lies. */
package worthsaving.shell;
