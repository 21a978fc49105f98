/** The order of many listings. */
package worthsaving.ranking;
