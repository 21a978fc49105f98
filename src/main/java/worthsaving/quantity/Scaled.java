package worthsaving.quantity;

/** A distribution multiplied by a positive constant. */
record Scaled(Distribution base, double factor) implements Distribution {

    Scaled {
        if (!(factor > 0) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("a scale must be positive, not " + factor);
        }
    }

    @Override
    public double mean() {
        return base.mean() * factor;
    }

    @Override
    public double variance() {
        return base.variance() * factor * factor;
    }

    @Override
    public double quantile(double p) {
        return base.quantile(p) * factor;
    }

    @Override
    public double cumulative(double x) {
        return base.cumulative(x / factor);
    }

    @Override
    public double meanOfWorst(double share) {
        return base.meanOfWorst(share) * factor;
    }

    @Override
    public Distribution scaled(double again) {
        return new Scaled(base, factor * again);
    }
}
