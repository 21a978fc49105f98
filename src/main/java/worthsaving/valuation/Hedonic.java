package worthsaving.valuation;

/** A fitted hedonic regression of ln price (Rosen 1974; ridge of Hoerl and Kennard 1970). */
record Hedonic(HedonicDesign design, double[] coefficients) {

    double predict(CarFacts car) {
        return design.predict(car, coefficients);
    }

    /** Spread of the effects whose name begins so: how far a level never seen may lie from the pooled value. */
    double effectSpread(String prefix) {
        double sum = 0;
        int n = 0;
        for (String name : design.names()) {
            if (name.startsWith(prefix) && name.indexOf('*') < 0) {
                double effect = coefficients[design.indexOf(name)];
                sum += effect * effect;
                n++;
            }
        }
        return n == 0 ? 0 : Math.sqrt(sum / n);
    }
}
