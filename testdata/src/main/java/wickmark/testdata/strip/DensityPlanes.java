package wickmark.testdata.strip;

import wickmark.testdata.colour.LinearRgb;

/** The absorbance painted so far, in the three channels; what is painted over it adds up. */
final class DensityPlanes {
  final Raster raster;
  final float[] red;
  final float[] green;
  final float[] blue;

  DensityPlanes(Raster raster) {
    this.raster = raster;
    this.red = new float[raster.size()];
    this.green = new float[raster.size()];
    this.blue = new float[raster.size()];
  }

  void add(int index, double absorbance, LinearRgb shares) {
    red[index] += (float) (absorbance * shares.red());
    green[index] += (float) (absorbance * shares.green());
    blue[index] += (float) (absorbance * shares.blue());
  }

  void addNeutral(int index, double absorbance) {
    float value = (float) absorbance;
    red[index] += value;
    green[index] += value;
    blue[index] += value;
  }
}
