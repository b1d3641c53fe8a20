package hafthold.decide;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas.Line;
import hafthold.decide.Atlas.Site;

/** Something in an atlas that a maker would not have guessed; put into words late, by the report. */
public sealed interface AtlasSurprise {

    /**
     * The place where most materials stay, and the one where fewest do.
     *
     * @param kindest the first
     * @param kindestTally its verdicts
     * @param harshest the last
     * @param harshestTally its verdicts
     */
    record Ends(Site kindest, Tally kindestTally, Site harshest, Tally harshestTally) implements AtlasSurprise {}

    /**
     * A place unlike the others of its climate.
     *
     * @param site the place
     * @param here verdicts in it
     * @param climate verdicts in all places of its climate
     */
    record OddPlace(Site site, Tally here, Tally climate) implements AtlasSurprise {

        /** Kind of climate it belongs to by its normals. */
        public ClimateGroup group() {
            return site.climate();
        }
    }

    /**
     * A material unlike its family: two verdicts or more apart in the usual place.
     *
     * @param line the material
     * @param usual verdict that more than half of the places give it
     * @param ofFamily verdict that more than half of the family's answers keep
     */
    record OddMaterial(Line line, Verdict usual, Verdict ofFamily) implements AtlasSurprise {

        /** True where it does better than its family. */
        public boolean isBetter() {
            return usual.compareTo(ofFamily) < 0;
        }
    }

    /**
     * A treated wood that moves no less than the plain one.
     *
     * @param treated with treatment
     * @param plain the same wood without, in the same cut
     * @param places in how many places its largest movement uses as much of its limit, or more
     */
    record NoHelp(Line treated, Line plain, int places) implements AtlasSurprise {}
}
