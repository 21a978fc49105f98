/** How good the forecasts were, and what finished cars teach: scores, calibration and conjugate updates. Pure arithmetic. */
package worthsaving.record;
