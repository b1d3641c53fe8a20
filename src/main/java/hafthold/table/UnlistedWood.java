package hafthold.table;

import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.Map;

/**
 * A wood that no table has, and the class whose figures stand in for it.
 *
 * @param id name in kebab case, as it was asked for
 * @param name name for people
 * @param woodClass row of the class
 * @param why how the class was found, as a clause
 */
record UnlistedWood(String id, String name, MaterialRow woodClass, Message why) {

    /** A row that has nothing of its own. */
    MaterialRow row() {
        boolean burl = (" " + name + " ").matches(".* (burl|burr) .*");
        return new MaterialRow(
                id,
                name + " (not in the tables)",
                "stands for: " + woodClass.name(),
                Family.WOOD,
                "scale",
                woodClass.id(),
                burl ? Cut.BURL : Cut.FLAT,
                "",
                "",
                "");
    }

    /** Which class was taken, why, and what would be better. */
    Finding finding() {
        return new Finding(
                Finding.Kind.ESTIMATE,
                id,
                Message.of(
                        id.contains(":") ? "note.unlisted-wood.of-class" : "note.unlisted-wood",
                        Map.of(
                                "name", Message.verbatim(name),
                                "class", Message.verbatim(woodClass.id()),
                                "class-name", Message.verbatim(woodClass.name()),
                                "why", why,
                                "id", Message.verbatim(id))));
    }
}
