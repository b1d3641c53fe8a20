package hafthold.table;

import hafthold.air.Place;
import hafthold.air.Setting;

/**
 * A setting in a place of the tables.
 *
 * @param place the place
 * @param setting where it is there
 */
public record StockPlace(Place place, Setting setting) {}
