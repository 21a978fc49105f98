/** The catalogue on screen: what can fail, what gives it away, what it takes, to be read and changed. */
package worthsaving.desktop.catalogue;
