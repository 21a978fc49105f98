/** Working a bought car: the journal, and at every stage whether to go on, how, or to stop; money spent is sunk. */
package worthsaving.teardown;
