package wickmark.testdata.scene;

import wickmark.testdata.truth.PointPx;

/** A pinhole camera with radial distortion. */
final class Pinhole implements Camera {
  private final CameraPlan plan;
  private final double[] eye = new double[3];
  private final double[] forward = new double[3];
  private final double[] right = new double[3];
  private final double[] down = new double[3];

  Pinhole(CameraPlan plan) {
    this.plan = plan;
    double tilt = StrictMath.toRadians(plan.pose().tiltDeg());
    double azimuth = StrictMath.toRadians(plan.pose().azimuthDeg());
    forward[0] = -StrictMath.sin(tilt) * StrictMath.cos(azimuth);
    forward[1] = -StrictMath.sin(tilt) * StrictMath.sin(azimuth);
    forward[2] = -StrictMath.cos(tilt);
    for (int i = 0; i < 3; i++) {
      eye[i] = -plan.distanceMm() * forward[i];
    }
    double[] level = unit(cross(forward, new double[] {0, 1, 0}));
    double[] below = cross(forward, level);
    double roll = StrictMath.toRadians(plan.pose().rollDeg());
    for (int i = 0; i < 3; i++) {
      right[i] = StrictMath.cos(roll) * level[i] + StrictMath.sin(roll) * below[i];
      down[i] = StrictMath.cos(roll) * below[i] - StrictMath.sin(roll) * level[i];
    }
  }

  @Override
  public PointPx project(double x, double y, double z) {
    double qx = x - eye[0];
    double qy = y - eye[1];
    double qz = z - eye[2];
    double depth = qx * forward[0] + qy * forward[1] + qz * forward[2];
    double u = (qx * right[0] + qy * right[1] + qz * right[2]) / depth;
    double v = (qx * down[0] + qy * down[1] + qz * down[2]) / depth;
    double bent = 1 + plan.k1() * (u * u + v * v);
    return new PointPx(
        plan.widthPx() / 2.0 + plan.focalPx() * u * bent,
        plan.heightPx() / 2.0 + plan.focalPx() * v * bent);
  }

  @Override
  public void placeAt(double px, double py, double z, double[] xy) {
    double ud = (px - plan.widthPx() / 2.0) / plan.focalPx();
    double vd = (py - plan.heightPx() / 2.0) / plan.focalPx();
    double bent = 1;
    for (int i = 0; plan.k1() != 0 && i < 12; i++) {
      bent = 1 + plan.k1() * (ud * ud + vd * vd) / (bent * bent);
    }
    double u = ud / bent;
    double v = vd / bent;
    double dz = forward[2] + u * right[2] + v * down[2];
    double far = (z - eye[2]) / dz;
    xy[0] = eye[0] + far * (forward[0] + u * right[0] + v * down[0]);
    xy[1] = eye[1] + far * (forward[1] + u * right[1] + v * down[1]);
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double[] unit(double[] a) {
    double length = Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
    return new double[] {a[0] / length, a[1] / length, a[2] / length};
  }
}
