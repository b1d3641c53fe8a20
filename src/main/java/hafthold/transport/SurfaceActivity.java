package hafthold.transport;

/** Water activity phi at the surfaces of a bundle with its first and second derivative in moisture content. */
final class SurfaceActivity {
    final double[] value;
    final double[] slope;
    final double[] curvature;

    SurfaceActivity(int width) {
        value = new double[width];
        slope = new double[width];
        curvature = new double[width];
    }

    void copy(int lane, SurfaceActivity other, int otherLane) {
        value[lane] = other.value[otherLane];
        slope[lane] = other.slope[otherLane];
        curvature[lane] = other.curvature[otherLane];
    }
}
