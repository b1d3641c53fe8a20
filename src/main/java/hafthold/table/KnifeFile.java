package hafthold.table;

import hafthold.air.Place;
import hafthold.air.Setting;
import hafthold.knife.FitLimits;
import hafthold.knife.FullTangBuild;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Knife;
import hafthold.knife.KnifeBuild;
import hafthold.knife.Order;
import hafthold.knife.TangStackBuild;
import hafthold.knife.TangStackKnife;
import hafthold.material.Finish;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.source.Finding;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * A build file with everything it names looked up in the tables.
 *
 * @param knife the knife, its materials in hand
 * @param place where it goes; empty where the file names none
 * @param climate recorded air that stands in for the place; empty where the file names none
 * @param setting where it lives there; empty where the file names none
 * @param findings one for every default that was taken
 */
public record KnifeFile(
        Knife knife,
        Optional<Place> place,
        Optional<HourlyFile> climate,
        Optional<Setting> setting,
        List<Finding> findings) {

    /** Keeps its own copy. */
    public KnifeFile {
        findings = List.copyOf(findings);
    }

    /**
     * Reads a build file and looks up its ids.
     *
     * @throws InvalidTableException at the first fault, naming file, line, key, value and the nearest valid id
     */
    public static KnifeFile read(Path file, TableSet tables, MaterialLibrary library) {
        return of(BuildFile.read(file), file, tables, library);
    }

    /** Looks up the ids of a build file that is read already; the recorded air that it names must lack nothing. */
    public static KnifeFile of(BuildFile build, Path file, TableSet tables, MaterialLibrary library) {
        return of(build, file, tables, library, HourlyReading.STRICT);
    }

    /**
     * Looks up the ids of a build file that is read already.
     *
     * @param file where it was read from, named in messages
     * @param may how much the recorded air that it names may lack
     * @throws InvalidTableException at the first unknown id, naming file, line, key, value and the nearest valid id
     */
    public static KnifeFile of(
            BuildFile build, Path file, TableSet tables, MaterialLibrary library, HourlyReading may) {
        return new Lookup(file, tables, library, may).of(build);
    }

    /**
     * Recorded air: a weather file by its ending, else a logger's.
     *
     * @param may how much it may lack
     */
    public static HourlyFile hourly(Path file, HourlyReading may) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".epw")
                ? EpwReader.read(file, may)
                : LoggerCsvReader.read(file, may);
    }

    /** Looks up ids and says where in the file a wrong one stands. */
    private record Lookup(Path file, TableSet tables, MaterialLibrary library, HourlyReading may) {

        KnifeFile of(BuildFile read) {
            Order order = read.build().order();
            requireWork(order.workClass());
            PlaceTable places = PlaceTable.read(tables);
            return new KnifeFile(
                    knife(read.build()),
                    order.placeId().map(id -> at("knife.place", id, places::find)),
                    order.climateFile().map(climate -> hourly(climate, may)),
                    order.settingId().map(this::setting),
                    read.findings());
        }

        private Knife knife(KnifeBuild build) {
            if (build instanceof FullTangBuild full) {
                return fullTang(full);
            }
            TangStackBuild stack = (TangStackBuild) build;
            List<ScaleMaterial> parts = new ArrayList<>();
            for (int i = 0; i < stack.parts().size(); i++) {
                parts.add(at(
                        "parts[" + (i + 1) + "].material", stack.parts().get(i).materialId(), library::find));
            }
            return new TangStackKnife(
                    stack,
                    at("tang.steel", stack.tang().steelId(), library::plain),
                    parts,
                    finish("grip.finish", stack.finishId()));
        }

        private FullTangKnife fullTang(FullTangBuild build) {
            List<Material> liners = new ArrayList<>();
            for (int i = 0; i < build.liners().size(); i++) {
                liners.add(at(
                        "liners[" + (i + 1) + "].material",
                        build.liners().get(i).materialId(),
                        library::plain));
            }
            List<Material> pins = new ArrayList<>();
            for (int i = 0; i < build.pins().size(); i++) {
                pins.add(at("pins[" + (i + 1) + "].metal", build.pins().get(i).metalId(), library::plain));
            }
            return new FullTangKnife(
                    build,
                    at("tang.steel", build.tang().steelId(), library::plain),
                    at("scales.material", build.scales().materialId(), library::find),
                    liners,
                    pins,
                    build.bolsterId().map(id -> at("bolster.material", id, library::plain)),
                    at("glue.adhesive", build.glue().adhesiveId(), library::plain),
                    finish("scales.finish", build.finishId()));
        }

        private Finish finish(String key, String id) {
            return at(key, id, FinishTable.read(tables)::find);
        }

        private Setting setting(String id) {
            return Setting.find(id)
                    .orElseThrow(() -> fault(
                            "knife.setting",
                            id,
                            NearestWord.oneOf(
                                    id, Setting.all().stream().map(Setting::id).toList())));
        }

        private void requireWork(String workClass) {
            List<String> classes =
                    LimitTable.read(tables).stream().map(FitLimits::name).toList();
            if (!classes.contains(workClass)) {
                throw fault("knife.work", workClass, NearestWord.oneOf(workClass, classes));
            }
        }

        private <T> T at(String key, String id, Function<String, T> find) {
            try {
                return find.apply(id);
            } catch (UnknownIdException e) {
                throw fault(key, id, e.expectation());
            }
        }

        private InvalidTableException fault(String key, String id, String expectation) {
            return TomlText.parse(file.toString(), TomlText.read(file), new ArrayList<>())
                    .faultAt(key, id, expectation);
        }
    }
}
