/** Rows of open price data: reading, cleaning with a report, and what the market level is. */
package worthsaving.market;
