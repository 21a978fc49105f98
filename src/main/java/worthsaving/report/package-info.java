/** Results as text, CSV and JSON. */
package worthsaving.report;
