package hafthold.simulate;

import hafthold.material.Material;
import hafthold.numeric.ImanConoverPairing;
import hafthold.numeric.LatinHypercube;
import hafthold.numeric.RankedColumns;
import hafthold.source.PublishedModel;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Where every input lies in every sample: a Latin hypercube of normal positions, 0 the value, -1 and +1 the low and the
 * high end of its range.
 *
 * <p>The ends of a range are taken as its 5 and 95 % points, as experts are asked for them (Cooke 1991), and as the ranges
 * of our tables are drawn: 20 % either side of a shrinkage whose standard deviation is 11 to 13 %. Nothing is drawn further
 * out than one and a half times the range.
 *
 * <p>Inputs of the order are drawn once. Those of a material are drawn from the seed and its id alone, so that it fares
 * the same whatever else is compared, and are paired with the order's so that chance correlations vanish. Tangential and
 * radial movement go together as they do over 80 woods of our tables (rank correlation 0.80, kept by a test). Denser wood
 * of a kind moves more, is stiffer and stronger and lets water through more slowly: correlations of one hidden density
 * with assumed loadings.
 */
@PublishedModel(
        source = "cooke-1991",
        locator = "5, 50 and 95 % points of what an expert holds plausible",
        validity = "ranges judged by people; the shape between the points is ours")
final class Draws {
    /** Rank correlation of tangential with radial movement over the woods of the tables. */
    static final double ACROSS_WITH_THROUGH = 0.8;

    /** Furthest position that is drawn. */
    static final double FURTHEST = 1.5;

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double END = NORMAL.inverseCumulativeProbability(0.95);

    /** How strongly an input follows the density of a piece of wood (assumed). */
    private static final Map<Input, Double> DENSITY_LOADING = Map.of(
            Input.SWELLING_ACROSS, 0.5,
            Input.SWELLING_THROUGH, 0.5,
            Input.DIFFUSIVITY, -0.5,
            Input.STIFFNESS, 0.7,
            Input.STRENGTH, 0.7);

    /** Steps of the golden section come back to none of their places soon. */
    private static final double GOLDEN = 0.6180339887498949;

    private static final String ORDER = "order";

    private final Sampling sampling;
    private final RankedColumns uniformOfOrder;
    private final Positions ofOrder;
    private final Optional<ImanConoverPairing> grown;
    private final Optional<ImanConoverPairing> made;
    private final List<Doubt> doubts;
    private final Map<String, Positions> ofMaterials = new ConcurrentHashMap<>();

    /** Positions of some inputs by sample, and their ranks. */
    private record Positions(double[][] position, int[][] rank) {
        static Positions of(RankedColumns uniform) {
            return new Positions(uniform.mapped(Draws::position).columns(), uniform.rank());
        }
    }

    Draws(Sampling sampling) {
        this.sampling = sampling;
        int inputs = Input.OF_ORDER.size();
        RankedColumns none = new RankedColumns(new double[0][], new int[0][]);
        this.uniformOfOrder = sampling.hasBands()
                ? new ImanConoverPairing(none, sampling.samples(), MatrixUtils.createRealIdentityMatrix(inputs))
                        .paired(LatinHypercube.of(inputs, sampling.samples(), random(ORDER)))
                : none;
        this.ofOrder = Positions.of(uniformOfOrder);
        this.grown = pairing(true);
        this.made = pairing(false);
        this.doubts = IntStream.range(0, samples()).mapToObj(this::doubt).toList();
    }

    private Optional<ImanConoverPairing> pairing(boolean hasGrain) {
        return sampling.hasBands()
                ? Optional.of(new ImanConoverPairing(uniformOfOrder, sampling.samples(), correlation(hasGrain)))
                : Optional.empty();
    }

    /** How many samples there are; 0 where only values are wanted. */
    int samples() {
        return sampling.hasBands() ? sampling.samples() : 0;
    }

    /** One doubt a sample; none where only values are wanted. */
    List<Doubt> doubts() {
        return doubts;
    }

    private Doubt doubt(int sample) {
        return new Doubt(
                input -> of(input)[sample],
                (input, material) -> of(input, material)[sample],
                (input, year) -> of(input)[inYear(sample, year)]);
    }

    /** The sample whose seasons stand for another year of a sample: samples are drawn without regard to each other. */
    private int inYear(int sample, int year) {
        int stride = Math.max(1, (int) (sampling.samples() * GOLDEN));
        return Math.floorMod(sample + year * stride, sampling.samples());
    }

    /** Positions of an input of the order, by sample. */
    double[] of(Input input) {
        return ofOrder.position[input.place()];
    }

    /** Positions of an input of a material, by sample. */
    double[] of(Input input, Material material) {
        return positions(input, material).position[input.place()];
    }

    /** Ranks of the positions of an input, by sample, from 0. */
    int[] ranks(Input input, Material material) {
        return positions(input, material).rank[input.place()];
    }

    private Positions positions(Input input, Material material) {
        if (input.isOfOrder()) {
            return ofOrder;
        }
        Positions drawn = ofMaterials.get(material.id());
        return drawn != null ? drawn : ofMaterials.computeIfAbsent(material.id(), id -> draw(material));
    }

    private Positions draw(Material material) {
        ImanConoverPairing pairing = (Input.hasGrain(material) ? grown : made).orElseThrow();
        return Positions.of(
                pairing.paired(LatinHypercube.of(Input.OF_MATERIAL.size(), sampling.samples(), random(material.id()))));
    }

    /** Wanted rank correlations of all inputs, those of the order first. */
    static RealMatrix correlation(boolean hasGrain) {
        int held = Input.OF_ORDER.size();
        RealMatrix matrix = MatrixUtils.createRealIdentityMatrix(held + Input.OF_MATERIAL.size());
        if (hasGrain) {
            DENSITY_LOADING.forEach((one, loading) -> DENSITY_LOADING.forEach((other, otherLoading) -> {
                if (one != other) {
                    matrix.setEntry(place(one), place(other), loading * otherLoading);
                }
            }));
        }
        int across = place(Input.SWELLING_ACROSS);
        int through = place(Input.SWELLING_THROUGH);
        matrix.setEntry(across, through, ACROSS_WITH_THROUGH);
        matrix.setEntry(through, across, ACROSS_WITH_THROUGH);
        return matrix;
    }

    private static int place(Input ofMaterial) {
        return Input.OF_ORDER.size() + ofMaterial.place();
    }

    /** Position of a share of the probability in a range, held within {@link #FURTHEST}. */
    static double position(double probability) {
        double position = NORMAL.inverseCumulativeProbability(probability) / END;
        return Math.max(-FURTHEST, Math.min(FURTHEST, position));
    }

    /** Chance that depends on the seed and a name only. */
    private SplittableRandom random(String name) {
        long hash = 0xcbf29ce484222325L;
        for (byte letter : name.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (letter & 0xff)) * 0x100000001b3L;
        }
        return new SplittableRandom(hash ^ Long.rotateLeft(sampling.seed() * 0x9e3779b97f4a7c15L, 32));
    }
}
