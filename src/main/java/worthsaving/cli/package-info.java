/** The command line: a thin shell over the core. */
package worthsaving.cli;
