package wickmark.testdata.scene;

import java.util.List;
import java.util.Optional;

/**
 * Shadows that things cast on the desk where they lie: a dark rim, and a soft shadow away from the
 * light.
 */
final class Shadows {

  /** Something that casts a shadow. */
  interface Caster {
    /**
     * Returns the distance in mm from a place of the world to the thing's outline, below 0 inside.
     */
    double distance(double x, double y);

    /** Returns its height above the desk near a place of the world, mm. */
    double heightNear(double x, double y);
  }

  private final List<Caster> casters;
  private final double[] light;
  private final Optional<Caster> ground;

  /** Shadows on the desk. */
  Shadows(List<Caster> casters, double[] light) {
    this(casters, light, Optional.empty());
  }

  private Shadows(List<Caster> casters, double[] light, Optional<Caster> ground) {
    this.casters = List.copyOf(casters);
    this.light = light;
    this.ground = ground;
  }

  /** Shadows on a thing by what lies on it. */
  static Shadows on(Caster thing, List<Caster> above, double[] light) {
    return new Shadows(above, light, Optional.of(thing));
  }

  /** Returns the share of light that reaches a place on the desk, or on the thing. */
  float reaching(double x, double y) {
    double left = 1;
    for (Caster caster : casters) {
      double near = caster.distance(x, y);
      if (near > 40) {
        continue;
      }
      double height = height(caster, x, y);
      double shift = height / light[2];
      double off = caster.distance(x + light[0] * shift, y + light[1] * shift);
      double penumbra = 0.25 + 0.6 * height;
      double direct = Math.max(0, Math.min(1, 0.5 - off / (2 * penumbra)));
      double close = Math.max(0, near) / (0.3 + height);
      double rim = 0.3 / (1 + 3 * close * close);
      left *= (1 - 0.42 * direct * direct * (3 - 2 * direct)) * (1 - rim);
    }
    return (float) left;
  }

  private double height(Caster caster, double x, double y) {
    double above = caster.heightNear(x, y);
    // Nothing is thinner than paper, which lies 0.15 mm high.
    return ground.isEmpty() ? above : Math.max(0.15, above - ground.get().heightNear(x, y));
  }

  boolean anyNear(double x, double y, double reach) {
    for (Caster caster : casters) {
      if (caster.distance(x, y) < reach) {
        return true;
      }
    }
    return false;
  }

  /** Returns the distance to a rectangle around the origin, below 0 inside. */
  static double toRectangle(double u, double v, double halfWidth, double halfHeight) {
    double dx = Math.abs(u) - halfWidth;
    double dy = Math.abs(v) - halfHeight;
    double outside = Math.sqrt(square(Math.max(dx, 0)) + square(Math.max(dy, 0)));
    return outside + Math.min(0, Math.max(dx, dy));
  }

  private static double square(double value) {
    return value * value;
  }
}
