package hafthold.air;

/**
 * A place on earth with its monthly normals: where a knife goes.
 *
 * @param id short kebab-case name
 * @param name name for people
 * @param country country
 * @param climateGroup climate in words
 * @param koppen Koeppen class, such as Cfb; may be empty
 * @param latitudeDegrees north positive, -90 to 90
 * @param longitudeDegrees east positive, -180 to 180
 * @param elevationMetres above sea level, -500 to 6000
 * @param normals monthly temperature and humidity
 * @param humidityKind how the humidity was come by
 * @param temperatureSourceKey key of a row in {@code sources.csv}
 * @param humiditySourceKey key of a row in {@code sources.csv}
 * @param note anything the user should know; may be empty
 */
public record Place(
        String id,
        String name,
        String country,
        String climateGroup,
        String koppen,
        double latitudeDegrees,
        double longitudeDegrees,
        double elevationMetres,
        MonthlyNormals normals,
        HumidityKind humidityKind,
        String temperatureSourceKey,
        String humiditySourceKey,
        String note) {

    /** Rejects places without a name, or off the globe. */
    public Place {
        if (id.isBlank() || name.isBlank()) {
            throw new IllegalArgumentException("a place needs an id and a name, got '" + id + "', '" + name + "'");
        }
        if (!(Math.abs(latitudeDegrees) <= 90 && Math.abs(longitudeDegrees) <= 180)) {
            throw new IllegalArgumentException(id + " lies off the globe: latitude " + latitudeDegrees + ", longitude "
                    + longitudeDegrees + " degrees");
        }
        if (!(elevationMetres >= -500 && elevationMetres <= 6000)) {
            throw new IllegalArgumentException(id + " needs an elevation from -500 to 6000 m, got " + elevationMetres);
        }
    }

    /** Name and country for people; the name alone where both are one. */
    public String fullName() {
        return name.equals(country) ? name : name + ", " + country;
    }

    /** Largest uncertainty of a month's mean humidity, percentage points of relative humidity. */
    public double humidityUncertaintyPoints() {
        return normals.meanCelsius().stream()
                .mapToDouble(humidityKind::uncertaintyPoints)
                .max()
                .orElseThrow();
    }

    /** The outdoor year that stands for these normals, see {@link ReferenceYear}. */
    public AirSeries referenceYear() {
        return ReferenceYear.of(normals);
    }
}
