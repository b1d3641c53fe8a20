package hafthold.table;

import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.source.Finding;

/**
 * A wood that no table has, and the class whose figures stand in for it.
 *
 * @param id name in kebab case, as it was asked for
 * @param name name for people
 * @param woodClass row of the class
 * @param why how the class was found, as a clause
 */
record UnlistedWood(String id, String name, MaterialRow woodClass, String why) {

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
                "No table has '" + name + "'. The class " + woodClass.id() + " (" + woodClass.name()
                        + ") stands in for it, " + why + "; its band spans the woods of that class. Better: "
                        + (id.contains(":") ? "" : "name the class yourself, such as hardwood-dense:" + id + ", or ")
                        + "measure a slip of it.");
    }
}
