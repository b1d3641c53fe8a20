package hafthold.simulate;

import hafthold.material.Finish;
import hafthold.quantity.Mass;

/**
 * Where stock lies and what it is looked at with.
 *
 * @param air the air there
 * @param isChecked whether its hygrometer is known to be right
 * @param balance smallest step that the balance shows
 * @param seal what covers a face that is sealed
 */
public record StockStore(StockAir air, boolean isChecked, Mass balance, Finish seal) {}
