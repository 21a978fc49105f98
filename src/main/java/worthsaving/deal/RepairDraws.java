package worthsaving.deal;

/**
 * Money and book hours of the repair at every point; filled once per car.
 *
 * @param cash parts, consumables and tools, jobs done twice before the sale included
 * @param hours likewise, at the worker's factor, before the car's own speed
 * @param backCash jobs that come back after the sale
 */
record RepairDraws(double[] cash, double[] hours, double[] backCash, double[] backHours) {

    static RepairDraws ofSize(int atoms) {
        return new RepairDraws(new double[atoms], new double[atoms], new double[atoms], new double[atoms]);
    }
}
