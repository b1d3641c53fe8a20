package hafthold.cli;

import hafthold.air.ClimateGroup;
import hafthold.air.MonthlyNormals;
import hafthold.air.Place;
import hafthold.decide.Atlas.Site;
import hafthold.simulate.Conditions;
import hafthold.simulate.Destination;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * One order for many places, each made up when its turn comes.
 *
 * @param order the order for one of them
 * @param sites the places
 * @param destinations where the knife goes, by the id of the place
 */
record Tour(Conditions order, List<Site> sites, Map<String, Supplier<Destination>> destinations) {

    /** A place of the tables. */
    static Site siteOf(Place place) {
        return new Site(place.id(), place.fullName(), ClimateGroup.of(place.normals()));
    }

    /** A place of which hours were recorded, called as its file says. */
    static Site siteOf(Destination recorded) {
        return new Site(recorded.id(), recorded.id(), ClimateGroup.of(MonthlyNormals.of(recorded.outdoors())));
    }

    /** A place with its air. */
    Destination destination(Site site) {
        return destinations.get(site.id()).get();
    }
}
