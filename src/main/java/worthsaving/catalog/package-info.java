/** What can break, what it shows, how one gets at it and what mends it: the mechanic's own editable tables. */
package worthsaving.catalog;
