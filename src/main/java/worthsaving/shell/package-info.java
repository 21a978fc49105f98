/** What command line and window share in reading the project's own files; opens none itself. */
package worthsaving.shell;
