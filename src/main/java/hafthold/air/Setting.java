package hafthold.air;

import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Where a knife lives: the rule that turns the outdoor air of a place into the air about the knife. */
public sealed interface Setting
        permits Outdoors,
                HeatedHome,
                UncooledHome,
                AirConditionedHome,
                Kitchen,
                Shed,
                BoatCabin,
                Vehicle,
                LeatherSheath,
                DisplayCase,
                HeldAir {

    /** Short kebab-case name, such as heated-home. */
    String id();

    /** Name for people, such as "heated home". */
    String name();

    /** The rule in one sentence for people, its figures included. */
    Message rule();

    /** What the rule rests on, one short phrase. */
    Message basis();

    /**
     * Air about the knife.
     *
     * @param outdoor outdoor air; taken as closed, starting at midnight
     * @return air at the same instants, relative humidity within 0 to 1
     */
    AirSeries inside(AirSeries outdoor);

    /** The same setting in another home; empty where no home is part of it. */
    default Optional<Setting> inHome(UnaryOperator<HeatedHome> change) {
        return Optional.empty();
    }

    /** What a report has to say about this choice. */
    default Finding finding() {
        return new Finding(
                Finding.Kind.ESTIMATE, id(), Message.of("note.setting", Map.of("rule", rule(), "basis", basis())));
    }

    /** All settings that have usual figures, in the order people think of them. */
    static List<Setting> all() {
        return List.of(
                Outdoors.usual(),
                HeatedHome.usual(),
                UncooledHome.usual(),
                AirConditionedHome.usual(),
                Kitchen.usual(),
                Shed.usual(),
                BoatCabin.usual(),
                Vehicle.usual(),
                LeatherSheath.usual(),
                DisplayCase.usual());
    }

    /** The setting of an id with its usual figures; empty for any other word. */
    static Optional<Setting> find(String id) {
        for (Setting setting : all()) {
            if (setting.id().equals(id)) {
                return Optional.of(setting);
            }
        }
        return Optional.empty();
    }
}
