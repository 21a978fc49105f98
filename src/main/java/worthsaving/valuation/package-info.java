/** What the car will be worth running: fitting, intervals, explanation and keeping of price models. */
package worthsaving.valuation;
