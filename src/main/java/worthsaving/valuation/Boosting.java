package worthsaving.valuation;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ml.dmlc.xgboost4j.java.Booster;
import ml.dmlc.xgboost4j.java.DMatrix;
import ml.dmlc.xgboost4j.java.XGBoost;
import ml.dmlc.xgboost4j.java.XGBoostError;
import worthsaving.quantity.Seed;

/**
 * Gradient-boosted trees (Friedman 2001; Chen and Guestrin 2016), fitted by XGBoost and handed back as plain
 * arrays, so that a fitted model needs no native library. One thread per fit: the same bits on any machine
 * of the same kind; several fits may run side by side.
 */
final class Boosting {

    /** How trees are grown; leaf by leaf, best gain first. */
    record Settings(
            int trees, int leaves, double shrinkage, double rowShare, double columnShare, double leastLeafWeight) {}

    /**
     * A matrix of rows.
     *
     * @param x rows after one another, NaN for not stated
     * @param types of the columns: "q" for a quantity, "c" for a code from 0 up without order
     */
    record Rows(float[] x, String[] types) {}

    private static final ObjectMapper JSON = new ObjectMapper();

    private Boosting() {}

    /**
     * @param slope where the loss turns from square to absolute (pseudo-Huber: Charbonnier et al. 1997)
     */
    static TreeEnsemble fit(Rows rows, float[] y, double slope, Settings settings, Seed seed) {
        Map<String, Object> parameters = parameters(settings, seed);
        parameters.put("objective", "reg:pseudohubererror");
        parameters.put("huber_slope", slope);
        return withMatrix(rows, y, matrix -> XGBoost.train(
                matrix, parameters, settings.trees(), Map.of(), null, null));
    }

    /** Least absolute deviation; the leaves are true medians of what is left (Friedman 2001). */
    static TreeEnsemble fitAbsolute(Rows rows, float[] y, Settings settings, Seed seed) {
        Map<String, Object> parameters = parameters(settings, seed);
        parameters.put("objective", "reg:absoluteerror");
        return withMatrix(rows, y, matrix -> XGBoost.train(
                matrix, parameters, settings.trees(), Map.of(), null, null));
    }

    /**
     * The {@code p}-quantile, by a pinball loss whose corner is rounded over the width {@code slope}
     * (pseudo-Huber on each side, weighted p above and 1 - p below).
     */
    static TreeEnsemble fitQuantile(Rows rows, float[] y, double p, double slope, Settings settings, Seed seed) {
        Map<String, Object> parameters = parameters(settings, seed);
        parameters.put("objective", "reg:squarederror");
        return withMatrix(rows, y, matrix -> XGBoost.train(
                matrix, parameters, settings.trees(), Map.of(), new RoundedPinball(p, slope), null));
    }

    private interface Training {
        Booster run(DMatrix matrix) throws XGBoostError;
    }

    private static TreeEnsemble withMatrix(Rows rows, float[] y, Training training) {
        DMatrix matrix = null;
        Booster booster = null;
        try {
            matrix = new DMatrix(rows.x(), y.length, rows.types().length, Float.NaN);
            matrix.setFeatureTypes(rows.types());
            matrix.setLabel(y);
            booster = training.run(matrix);
            return new Export().trees(booster.getModelDump((String) null, false, "json"), rows.types().length);
        } catch (XGBoostError | JsonProcessingException e) {
            throw new IllegalStateException("fitting trees failed: " + e.getMessage(), e);
        } catch (UnsatisfiedLinkError | ExceptionInInitializerError | NoClassDefFoundError e) {
            throw new IllegalStateException(
                    "fitting needs XGBoost's native library, which did not load (" + e.getMessage()
                            + "); on Debian: apt-get install libgomp1. Saved models work without it.", e);
        } finally {
            if (booster != null) {
                booster.dispose();
            }
            if (matrix != null) {
                matrix.dispose();
            }
        }
    }

    private static Map<String, Object> parameters(Settings settings, Seed seed) {
        Map<String, Object> p = new HashMap<>();
        p.put("base_score", 0.0);
        p.put("tree_method", "hist");
        p.put("grow_policy", "lossguide");
        p.put("max_depth", 0);
        p.put("max_leaves", settings.leaves());
        p.put("eta", settings.shrinkage());
        p.put("subsample", settings.rowShare());
        p.put("colsample_bytree", settings.columnShare());
        p.put("min_child_weight", settings.leastLeafWeight());
        p.put("nthread", 1);
        p.put("seed", (int) (seed.value() & Integer.MAX_VALUE));
        p.put("verbosity", 0);
        return p;
    }

    /** Reads the library's own description of its trees. */
    private static final class Export {
        private final List<Integer> shape = new ArrayList<>();
        private final List<Float> value = new ArrayList<>();
        private final List<long[]> sets = new ArrayList<>();

        private TreeEnsemble trees(String[] dump, int columns) throws JsonProcessingException {
            for (String tree : dump) {
                preorder(JSON.readTree(tree));
            }
            float[] values = new float[value.size()];
            for (int i = 0; i < values.length; i++) {
                values[i] = value.get(i);
            }
            return new TreeEnsemble(
                    shape.stream().mapToInt(s -> s).toArray(), values, sets.toArray(long[][]::new), columns);
        }

        private void preorder(JsonNode node) {
            if (node.has("leaf")) {
                shape.add(TreeEnsemble.LEAF);
                value.add((float) node.get("leaf").asDouble());
                return;
            }
            int feature = Integer.parseInt(node.get("split").asText().substring(1));
            int yes = node.get("yes").asInt();
            JsonNode condition = node.get("split_condition");
            boolean missingFirst = node.get("missing").asInt() == yes;
            shape.add(4 * feature + (condition.isArray() ? 2 : 0) + (missingFirst ? 1 : 0));
            if (condition.isArray()) {
                value.add((float) sets.size());
                sets.add(bits(condition));
            } else {
                value.add((float) condition.asDouble());
            }
            JsonNode first = node.get("children").get(0);
            JsonNode second = node.get("children").get(1);
            boolean inOrder = first.get("nodeid").asInt() == yes;
            preorder(inOrder ? first : second);
            preorder(inOrder ? second : first);
        }

        private static long[] bits(JsonNode codes) {
            BitSet bits = new BitSet();
            codes.forEach(code -> bits.set(code.asInt()));
            return bits.toLongArray();
        }
    }
}
