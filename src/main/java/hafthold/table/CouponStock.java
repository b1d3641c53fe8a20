package hafthold.table;

import hafthold.knife.Coupon;
import hafthold.knife.OwnStock;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Coupons of one stock, with the material of the tables that it is, and the name its figures go under.
 *
 * @param material as the tables have it
 * @param own name of the own figures
 * @param coupons of it
 * @param findings choices made
 */
public record CouponStock(Material material, OwnStock own, List<Coupon> coupons, List<Finding> findings) {
    private static final String TREATED = "+";

    /** Keeps its own copies. */
    public CouponStock {
        coupons = List.copyOf(coupons);
        findings = List.copyOf(findings);
    }

    /**
     * Gathers coupons by what they are of.
     *
     * @param file they were told in, for complaints
     * @throws UnknownIdException when no table has a material
     * @throws InvalidTableException when a coupon of it tells nothing, or a name is taken
     */
    public static List<CouponStock> of(List<Coupon> coupons, MaterialLibrary library, String file) {
        Map<String, List<Coupon>> byId = new LinkedHashMap<>();
        Map<String, Material> materials = new LinkedHashMap<>();
        Map<String, OwnStock> names = new LinkedHashMap<>();
        for (Coupon coupon : coupons) {
            Material material = material(coupon, library, file);
            OwnStock own = own(coupon, material, library, file);
            Material before = materials.putIfAbsent(own.id(), material);
            if (before != null && !before.id().equals(material.id())) {
                throw fault(
                        file,
                        coupon,
                        "own_name '" + own.name() + "' is of " + before.id() + " in another coupon;"
                                + " give each material a name of its own");
            }
            names.put(own.id(), own);
            byId.computeIfAbsent(own.id(), none -> new ArrayList<>()).add(coupon);
        }
        return byId.entrySet().stream()
                .map(stock -> stock(materials.get(stock.getKey()), names.get(stock.getKey()), stock.getValue()))
                .toList();
    }

    private static CouponStock stock(Material material, OwnStock own, List<Coupon> coupons) {
        List<Finding> findings = new ArrayList<>(material.findings());
        for (Coupon coupon : coupons) {
            if (coupon.cut().isEmpty() && material.usualCut() != Cut.NONE) {
                findings.add(new Finding(
                        Finding.Kind.DEFAULT,
                        "coupon.cut",
                        Message.of(
                                "note.coupon-cut",
                                Map.of(
                                        "coupon", Message.verbatim(coupon.name()),
                                        "cut",
                                                Message.of("bench.cut."
                                                        + material.usualCut().word())))));
            }
        }
        return new CouponStock(material, own, coupons, findings);
    }

    private static String parts(ScaleMaterial several) {
        return several instanceof Hybrid hybrid
                ? hybrid.parts().stream()
                        .map(part -> '"' + part.material().id() + '"')
                        .distinct()
                        .collect(Collectors.joining(" and "))
                : "that of a plain one";
    }

    private static Material material(Coupon coupon, MaterialLibrary library, String file) {
        ScaleMaterial found = library.find(coupon.material());
        if (!(found instanceof Material material)) {
            throw fault(
                    file,
                    coupon,
                    "material '" + coupon.material()
                            + "' is several side by side, and no strip of it tells one from the"
                            + " other; measure a strip of each part by itself, as material = "
                            + parts(found));
        }
        if (material.water().isEmpty()) {
            throw fault(
                    file,
                    coupon,
                    "material '" + coupon.material()
                            + "' takes up no water by the tables, so there is nothing that a coupon could tell");
        }
        boolean hasRings = material.usualCut() != Cut.NONE;
        if (!hasRings && coupon.cut().isPresent()) {
            throw fault(file, coupon, "cut: " + material.id() + " has no rings; leave the line out");
        }
        return material;
    }

    private static OwnStock own(Coupon coupon, Material material, MaterialLibrary library, String file) {
        String typed = coupon.material();
        boolean isTreated = material.id().contains(TREATED);
        boolean isListed = !isTreated && library.row(material.id()).isPresent();
        if (coupon.ownName().isEmpty() && isListed) {
            return new OwnStock(material.id(), material.name(), "");
        }
        String plain = isTreated ? material.id().substring(0, material.id().indexOf(TREATED)) : typed;
        String basedOn = isListed ? material.id() : library.figuresFrom(plain);
        String name = coupon.ownName().orElse("own " + material.name());
        String id = id(coupon.ownName().orElse("own " + material.id()));
        if (id.isEmpty()) {
            throw fault(file, coupon, "own_name '" + name + "' has no letters; such as \"burl of the old stock\"");
        }
        if (library.row(id).isPresent()) {
            throw fault(
                    file,
                    coupon,
                    "own_name '" + name + "' is a name of the tables; choose another, or leave the line"
                            + " out so that your figures replace those of the tables");
        }
        return new OwnStock(id, name, basedOn);
    }

    private static String id(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}0-9]+", "-").replaceAll("^-+|-+$", "");
    }

    private static InvalidTableException fault(String file, Coupon coupon, String problem) {
        return new InvalidTableException(file, "coupon '" + coupon.name() + "': " + problem);
    }
}
