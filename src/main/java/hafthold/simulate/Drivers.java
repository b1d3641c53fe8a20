package hafthold.simulate;

import hafthold.simulate.FitYear.Driver;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Which inputs make an answer doubtful: their shares of the squared spread, from changing one at a time. */
final class Drivers {
    private Drivers() {}

    /** Inputs by share, largest first; the wider side of each counts. */
    static <T> List<Driver> of(List<Doubt> doubts, Spread<T> spread, ToDoubleFunction<T> quantity) {
        Map<Doubt.Input, Double> squares = new EnumMap<>(Doubt.Input.class);
        double middle = quantity.applyAsDouble(spread.value());
        for (int i = 0; i < spread.doubts().size(); i++) {
            double change = quantity.applyAsDouble(spread.doubts().get(i)) - middle;
            squares.merge(doubts.get(i).input(), change * change, Math::max);
        }
        double sum = squares.values().stream().mapToDouble(Double::doubleValue).sum();
        return squares.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .map(entry -> new Driver(entry.getKey().word(), entry.getValue() / sum))
                .sorted(Comparator.comparingDouble(Driver::share).reversed())
                .toList();
    }
}
