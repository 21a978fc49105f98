/** The screens' way to the casebook, with the invented sample behind it. */
package worthsaving.desktop.book;
