package hafthold.transport;

import hafthold.air.AirSeries;
import hafthold.air.SaturationPressure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Sorts slabs in the same air by how long they remember and sends them through the year in bundles. */
final class SlabSorter {
    /** Wide enough for vector instructions, narrow enough for the cache of a core. */
    private static final int WIDEST = 32;

    private final List<Slab> slabs;
    private final AirTrack track;
    private final List<SlabLayout> layouts;
    private final int[] leadIn;
    private final double[] deepMoisture;

    SlabSorter(List<Slab> slabs, AirSeries air, SaturationPressure saturation, Resolution resolution) {
        this.slabs = slabs;
        track = new AirTrack(air, slabs, saturation);
        MeanAir mean = MeanAir.of(air);
        layouts = slabs.stream()
                .map(slab -> SlabLayout.of(slab, mean, resolution))
                .toList();
        LeadIn before = new LeadIn(air, saturation);
        leadIn = slabs.stream().mapToInt(before::samples).toArray();
        deepMoisture = slabs.stream().mapToDouble(before::deepMoisture).toArray();
    }

    /** The year of every slab, in order; bundles are shared among threads, the answer does not depend on how. */
    List<PeriodicMoisture> years(int layers) {
        PeriodicMoisture[] years = new PeriodicMoisture[slabs.size()];
        bundles().parallelStream().forEach(places -> {
            List<PeriodicMoisture> found = search(places, layers);
            for (int i = 0; i < places.size(); i++) {
                years[places.get(i)] = found.get(i);
            }
        });
        return Arrays.asList(years);
    }

    private List<PeriodicMoisture> search(List<Integer> places, int layers) {
        List<SlabLayout> bundle = places.stream().map(layouts::get).toList();
        double[] start =
                places.stream().mapToDouble(place -> deepMoisture[place]).toArray();
        YearSearch search = new YearSearch(track, layers);
        return isSlow(places.get(0))
                ? search.slow(bundle, start)
                : search.quick(
                        bundle,
                        start,
                        places.stream().mapToInt(place -> leadIn[place]).toArray());
    }

    private boolean isSlow(int place) {
        return leadIn[place] >= track.size();
    }

    /** Slabs of equally many points, slow and quick ones apart, those of like lead-in together. */
    private List<List<Integer>> bundles() {
        List<Integer> places = IntStream.range(0, slabs.size())
                .boxed()
                .sorted(Comparator.comparing(this::isSlow)
                        .thenComparing(place -> layouts.get(place).points())
                        .thenComparing(place -> leadIn[place]))
                .toList();
        List<List<Integer>> bundles = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= places.size(); i++) {
            if (i == places.size() || !isAlike(places.get(first), places.get(i))) {
                addPieces(places.subList(first, i), bundles);
                first = i;
            }
        }
        return bundles;
    }

    private boolean isAlike(int place, int other) {
        return isSlow(place) == isSlow(other)
                && layouts.get(place).points() == layouts.get(other).points();
    }

    private static void addPieces(List<Integer> places, List<List<Integer>> bundles) {
        int pieces = (places.size() + WIDEST - 1) / WIDEST;
        for (int i = 0; i < pieces; i++) {
            bundles.add(places.subList(places.size() * i / pieces, places.size() * (i + 1) / pieces));
        }
    }
}
