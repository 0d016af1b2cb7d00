package hotidle.geartrain;

/**
 * Two wheels in mesh.
 *
 * @param first      name of a wheel
 * @param second     name of the other
 * @param efficiency power out over power in, seen from the carrier [-], above 0.5 to 1
 */
public record Mesh(String first, String second, double efficiency) {

    public Mesh {
        if (!(efficiency > 0.5 && efficiency <= 1)) {
            throw new IllegalArgumentException("efficiency of the mesh of " + first + " and " + second + " is "
                    + efficiency + " and must lie above 0.5 and at most at 1");
        }
    }
}
