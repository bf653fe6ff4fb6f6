package wickmark.cli.calibration;

import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.Resolution;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;
import wickmark.testdata.colour.SrgbCurve;
import wickmark.testdata.noise.Dice;

/**
 * Ways to spoil a picture, far enough that much in it is read wrongly: what confidences must tell.
 */
enum Spoiling {
  /** Out of focus: 0.4 to 1.2 mm (standard deviation). */
  BLURRED {
    @Override
    Spoilt of(Photo photo, List<TruthFile> strips, Dice dice) {
      double sigma = dice.between(0.4, 1.2) / strips.get(0).millimetresPerPixel();
      return new Spoilt(
          photo(photo, channels(photo, channel -> Smoothing.gaussian(channel, sigma))), strips);
    }
  },

  /** Four to six and a half stops too dark, with the noise that comes with it. */
  DARK {
    @Override
    Spoilt of(Photo photo, List<TruthFile> strips, Dice dice) {
      float light = (float) Math.pow(2, -dice.between(4, 6.5));
      return new Spoilt(
          photo(photo, channels(photo, channel -> changed(channel, light, 0, 0.05 * light, dice))),
          strips);
    }
  },

  /** Taken from so far away that a millimetre has 1 to 2 pixels. */
  SMALL {
    @Override
    Spoilt of(Photo photo, List<TruthFile> strips, Dice dice) {
      double scale = dice.between(1, 2) * strips.get(0).millimetresPerPixel();
      if (scale >= 1) {
        return new Spoilt(photo, strips);
      }
      int width = (int) (photo.widthPx() * scale);
      int height = (int) (photo.heightPx() * scale);
      Raster[] small =
          channels(
              photo,
              channel -> {
                Raster smooth = Smoothing.gaussian(channel, 0.5 / scale);
                Raster out = new Raster(width, height);
                for (int y = 0; y < height; y++) {
                  for (int x = 0; x < width; x++) {
                    out.set(x, y, (float) smooth.sample((x + 0.5) / scale, (y + 0.5) / scale));
                  }
                }
                return out;
              });
      return new Spoilt(
          photo(photo, small, scale), strips.stream().map(strip -> strip.scaled(scale)).toList());
    }
  },

  /** Seen through stray light that leaves a tenth to a third of all contrast, with noise. */
  VEILED {
    @Override
    Spoilt of(Photo photo, List<TruthFile> strips, Dice dice) {
      float left = (float) dice.between(0.1, 0.35);
      return new Spoilt(
          photo(
              photo,
              channels(photo, channel -> changed(channel, left, 0.5f * (1 - left), 0.006, dice))),
          strips);
    }
  },

  /** Half to all of the baseline's pencil rubbed out, and what lies on it. */
  BASELINE_RUBBED_OUT {
    @Override
    Spoilt of(Photo photo, List<TruthFile> strips, Dice dice) {
      return rubbedOut(TruthFile::baseline, photo, strips, dice);
    }
  },

  /** Half to all of the front's line rubbed out, and what lies on it. */
  FRONT_RUBBED_OUT {
    @Override
    Spoilt of(Photo photo, List<TruthFile> strips, Dice dice) {
      return rubbedOut(TruthFile::front, photo, strips, dice);
    }
  };

  /** Half the width of what is rubbed out, mm, and how far from it the paper is taken. */
  private static final double RUBBED_MM = 1;

  private static final double BESIDE_MM = 1.8;

  /** A spoilt picture with what is true of it. */
  record Spoilt(Photo photo, List<TruthFile> strips) {
    Spoilt {
      strips = List.copyOf(strips);
    }
  }

  /** Spoils a picture that shows these strips. */
  abstract Spoilt of(Photo photo, List<TruthFile> strips, Dice dice);

  /** Red, green and blue in linear light, each changed. */
  private static Raster[] channels(Photo photo, UnaryOperator<Raster> change) {
    float[] decoded = new float[256];
    for (int i = 0; i < 256; i++) {
      decoded[i] = (float) SrgbCurve.decode8(i);
    }
    Raster[] out = new Raster[3];
    for (int c = 0; c < 3; c++) {
      Raster channel = new Raster(photo.widthPx(), photo.heightPx());
      for (int y = 0; y < photo.heightPx(); y++) {
        for (int x = 0; x < photo.widthPx(); x++) {
          channel.set(x, y, decoded[photo.rgb(x, y) >> (16 - 8 * c) & 0xff]);
        }
      }
      out[c] = change.apply(channel);
    }
    return out;
  }

  private static Raster changed(Raster in, float factor, float more, double noise, Dice dice) {
    for (int i = 0; i < in.cells().length; i++) {
      in.cells()[i] = (float) (in.cells()[i] * factor + more + noise * dice.normal());
    }
    return in;
  }

  private static Photo photo(Photo like, Raster[] channels) {
    return photo(like, channels, 1);
  }

  private static Photo photo(Photo like, Raster[] channels, double scale) {
    int size = channels[0].cells().length;
    byte[] rgb = new byte[3 * size];
    for (int i = 0; i < size; i++) {
      for (int c = 0; c < 3; c++) {
        rgb[3 * i + c] = (byte) Math.round(255 * SrgbCurve.encodeClipped(channels[c].cells()[i]));
      }
    }
    return new Photo(
        channels[0].width(),
        channels[0].height(),
        rgb,
        like.resolution().map(r -> new Resolution(r.dpiX() * scale, r.dpiY() * scale)),
        like.focalLength35mm(),
        like.fromCamera());
  }

  /** A course on each strip rubbed out half to wholly: what the paper beside it shows. */
  private static Spoilt rubbedOut(
      Function<TruthFile, List<List<Double>>> course,
      Photo photo,
      List<TruthFile> strips,
      Dice dice) {
    double part = dice.between(0.5, 1.1);
    double pxPerMm = 1 / strips.get(0).millimetresPerPixel();
    return new Spoilt(
        photo(
            photo,
            channels(
                photo,
                channel -> {
                  Raster out = channel.copy();
                  for (TruthFile strip : strips) {
                    List<List<Double>> places = course.apply(strip);
                    for (int i = 1; i < places.size(); i++) {
                      rubOut(channel, out, places.get(i - 1), places.get(i), pxPerMm, part);
                    }
                  }
                  return out;
                })),
        strips);
  }

  private static void rubOut(
      Raster in, Raster out, List<Double> from, List<Double> to, double pxPerMm, double part) {
    double dx = to.get(0) - from.get(0);
    double dy = to.get(1) - from.get(1);
    double length = Math.hypot(dx, dy);
    double nx = -dy / length * pxPerMm;
    double ny = dx / length * pxPerMm;
    double most = Math.min(1, part);
    double step = 0.4 / pxPerMm;
    for (double s = 0; s <= length; s += 0.4) {
      double x = from.get(0) + dx * s / length;
      double y = from.get(1) + dy * s / length;
      for (double mm = -RUBBED_MM; mm <= RUBBED_MM; mm += step) {
        double px = x + mm * nx;
        double py = y + mm * ny;
        if (px < 0 || py < 0 || px >= in.width() || py >= in.height()) {
          continue;
        }
        double f = (mm + BESIDE_MM) / (2 * BESIDE_MM);
        double above = in.sample(x - BESIDE_MM * nx, y - BESIDE_MM * ny);
        double below = in.sample(x + BESIDE_MM * nx, y + BESIDE_MM * ny);
        double beside = above + f * (below - above);
        float was = in.at((int) px, (int) py);
        out.set((int) px, (int) py, (float) (was + most * (beside - was)));
      }
    }
  }
}
