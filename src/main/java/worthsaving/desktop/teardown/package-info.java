/** The teardown screen: how far the car is open, go on or stop, and the journal. */
package worthsaving.desktop.teardown;
