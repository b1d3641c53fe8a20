package hafthold.transport;

import hafthold.numeric.GradedGrid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Takes down what histories keep of the moisture at the points of a bundle. */
final class HistoryRecorder {
    private final int slabs;
    private final double[][] contentWeight;
    private final double[][] momentWeight;
    private final double[][][] layerWeight;
    private final double[] thickness;
    private final double[] contentBefore;
    private final double[] sum;
    private final double[][] mean;
    private final double[][] surface;
    private final double[][] back;
    private final double[][] firstMoment;
    /** Entry (layer, slab, sample). */
    private final double[][][] layers;

    HistoryRecorder(List<SlabLayout> layouts, int layers, int samples) {
        slabs = layouts.size();
        int points = layouts.get(0).points();
        contentWeight = new double[points][slabs];
        momentWeight = new double[points][slabs];
        layerWeight = new double[layers][points][slabs];
        thickness = new double[slabs];
        contentBefore = new double[slabs];
        sum = new double[slabs];
        for (int slab = 0; slab < slabs; slab++) {
            weigh(slab, layouts.get(slab));
        }
        mean = new double[slabs][samples];
        surface = new double[slabs][samples];
        back = new double[slabs][samples];
        firstMoment = new double[slabs][samples];
        this.layers = new double[layers][slabs][samples];
    }

    private void weigh(int slab, SlabLayout layout) {
        GradedGrid grid = layout.grid();
        double h = grid.thickness();
        thickness[slab] = h;
        double[] lever = grid.positions();
        for (int i = 0; i < lever.length; i++) {
            lever[i] = 12 * (lever[i] / h - 0.5) / h;
        }
        setColumn(contentWeight, slab, layout.storage().totals());
        setColumn(momentWeight, slab, layout.storage().moments(lever));
        for (int i = 0; i < layerWeight.length; i++) {
            setColumn(
                    layerWeight[i],
                    slab,
                    grid.meanWeights(h * i / layerWeight.length, h * (i + 1) / layerWeight.length));
        }
    }

    private static void setColumn(double[][] rows, int lane, double[] column) {
        for (int i = 0; i < column.length; i++) {
            rows[i][lane] = column[i];
        }
    }

    /** Notes the content that the balance starts from. */
    void open(BundleState state) {
        add(contentWeight, state);
        System.arraycopy(sum, 0, contentBefore, 0, slabs);
    }

    void take(int sample, BundleState state) {
        add(contentWeight, state);
        for (int s = 0; s < slabs; s++) {
            mean[s][sample] = sum[s] / thickness[s];
        }
        add(momentWeight, state);
        write(sum, firstMoment, sample);
        write(state.moisture[state.moisture.length - 1], surface, sample);
        write(state.moisture[0], back, sample);
        for (int i = 0; i < layers.length; i++) {
            add(layerWeight[i], state);
            write(sum, layers[i], sample);
        }
    }

    private void add(double[][] weight, BundleState state) {
        Arrays.fill(sum, 0);
        for (int i = 0; i < weight.length; i++) {
            Lanes.addProduct(weight[i], state.moisture[i], sum, slabs);
        }
    }

    private static void write(double[] lanes, double[][] series, int sample) {
        for (int s = 0; s < series.length; s++) {
            series[s][sample] = lanes[s];
        }
    }

    /** What was taken down, one history a slab. */
    List<MoistureHistory> histories(BundleState last, WaterLedger ledger, double stepSeconds) {
        add(contentWeight, last);
        List<MoistureHistory> histories = new ArrayList<>();
        for (int s = 0; s < slabs; s++) {
            double missing = sum[s] - contentBefore[s] + ledger.loss(s);
            double handled = Math.abs(sum[s]) + ledger.grossLoss(s);
            int slab = s;
            double[][] layer = new double[layers.length][];
            Arrays.setAll(layer, i -> layers[i][slab]);
            histories.add(new MoistureHistory(
                    stepSeconds,
                    mean[s],
                    surface[s],
                    back[s],
                    firstMoment[s],
                    layer,
                    handled == 0 ? 0 : Math.abs(missing) / handled,
                    ledger.largestError(s),
                    ledger.steps(s)));
        }
        return histories;
    }
}
