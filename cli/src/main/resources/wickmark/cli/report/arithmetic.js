"use strict";
/*
 * The arithmetic of the program, on the straightened picture: places in its pixels become distances
 * and Rf with their uncertainties. It is the program's own, step by step (StripMeasurer,
 * LaneMeasurement, LaneRuler, Decimals), and tests compare the two.
 */
const arithmetic = (() => {
  /** Standard uncertainties a centre may lie beyond a line before it is more than chance. */
  const CHANCE = 3;

  const courseAt = (course, x) => {
    const t = Math.max(-1.15, Math.min(1.15, (x - course.middle) / course.half));
    return course.coefficients.reduceRight((value, c) => value * t + c, 0);
  };

  const slopeOf = (course) =>
    (courseAt(course, course.middle + course.half) - courseAt(course, course.middle - course.half))
      / (2 * course.half);

  /** The straight line through two places that a person set. */
  const handCourse = (from, to, width, sigma) => {
    const half = width / 2;
    const u = (from.x - half) / half;
    const v = (to.x - half) / half;
    const rise = (to.y - from.y) / (v - u);
    const variance = (sigma * sigma) / ((v - u) * (v - u));
    return {
      middle: half,
      half,
      coefficients: [from.y - rise * u, rise],
      covariance: [variance * (u * u + v * v), -variance * (u + v), 2 * variance],
    };
  };

  const handUncertainty = (course, x) => {
    const t = Math.max(-1.15, Math.min(1.15, (x - course.middle) / course.half));
    const [a, b, c] = course.covariance;
    return Math.sqrt(Math.max(0, a + 2 * b * t + c * t * t));
  };

  /** A sample's way: from its origin, square to the baseline, to the front. */
  const way = (baseline, front, originX) => {
    const originY = courseAt(baseline, originX);
    const slope = slopeOf(baseline);
    const norm = Math.sqrt(1 + slope * slope);
    const nx = slope / norm;
    const ny = -1 / norm;
    let length = (originY - courseAt(front, originX)) / -ny;
    for (let i = 0; i < 30; i++) {
      length = (courseAt(front, originX + length * nx) - originY) / ny;
    }
    return { length, along: (x, y) => (x - originX) * nx + (y - originY) * ny };
  };

  const root = (...terms) => Math.sqrt(terms.reduce((sum, t) => sum + t * t, 0));

  /** Distances and Rf of one lane; b and f are the uncertainties of its lines. */
  const ruler = (length, b, f, shared) => {
    const part = (place) => Math.max(0, Math.min(1, place / length));
    return {
      part,
      rfUncertainty: (place, u) => {
        const p = part(place);
        return root(u / length, (p / length) * f, ((1 - p) / length) * b,
          p * (1 - p) * shared.straightening,
          (2 * Math.sqrt(p * (1 - p)) / length) * shared.flatness);
      },
      distanceUncertainty: (place, u) => {
        const p = part(place);
        return root(u, b, place * shared.relativeScale, place * (1 - p) * shared.straightening,
          2 * Math.sqrt(p) * shared.flatness);
      },
    };
  };

  /** The three centres of a spot, along its lane, with their uncertainties. */
  const centres = (spot, lane, units, handSpot) => {
    const place = lane.along(spot.x, spot.y) * units;
    if (spot.hand) {
      const u = spot.u || handSpot * units;
      return { centroid: [place, u], middle: [place, u], densest: [place, u],
        top: place, bottom: place };
    }
    const top = lane.along(spot.x, spot.top) * units;
    const bottom = lane.along(spot.x, spot.bottom) * units;
    return {
      centroid: [place, spot.u],
      middle: [(top + bottom) / 2, spot.uMiddle],
      densest: [lane.along(spot.densestX, spot.densestY) * units, spot.uDensest],
      top,
      bottom,
    };
  };

  /** Measures a lane; its spots come back from the front down, those beyond the lines left out. */
  const measureLane = (strip, lane) => {
    const units = strip.unitsPerPixel;
    const path = way(strip.baseline, strip.front, lane.originX);
    const lineU = (course, found) =>
      course.covariance
        ? root(handUncertainty(course, lane.originX), strip.hand.lineMeant) * units
        : found;
    const b = lineU(strip.baseline, lane.baselineU);
    const f = lineU(strip.front, lane.frontU);
    const length = path.length * units;
    if (!(length > 0)) {
      return { front: null, spots: [] };
    }
    const rule = ruler(length, b, f, strip.shared);
    const spots = [];
    for (const spot of lane.spots) {
      const at = centres(spot, path, units, strip.hand.spot);
      const [place, u] = at[strip.centre];
      const beyond = at.bottom > length && place - length > CHANCE * root(u, f);
      const below = at.top < 0 && -place > CHANCE * root(u, b);
      if (!beyond && !below) {
        const [centroid, uCentroid] = at.centroid;
        spots.push({
          spot,
          along: place,
          distance: rounded(centroid, 3),
          distanceU: rounded(rule.distanceUncertainty(centroid, uCentroid), 3),
          middle: rounded(at.middle[0], 3),
          rf: rounded(rounded(rule.part(place), 5), 4),
          rfU: rounded(rule.rfUncertainty(place, u), 5),
        });
      }
    }
    spots.sort((one, other) => other.along - one.along);
    return {
      front: rounded(length, 3),
      frontU: rounded(rule.distanceUncertainty(length, f), 3),
      spots,
    };
  };

  /** Half-up on the decimal number that the value shows, as the program rounds. */
  const text = (value, decimals) => {
    const [, sign, whole, part = "", exponent = "0"] =
      /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/.exec(String(value));
    let digits = BigInt(whole + part);
    const scale = part.length - Number(exponent) - decimals;
    if (scale > 0) {
      const ten = 10n ** BigInt(scale);
      digits = (2n * digits + ten) / (2n * ten);
    } else {
      digits *= 10n ** BigInt(-scale);
    }
    const padded = digits.toString().padStart(decimals + 1, "0");
    const point = padded.length - decimals;
    const shown = decimals > 0 ? padded.slice(0, point) + "." + padded.slice(point) : padded;
    return (sign && digits > 0n ? "-" : "") + shown;
  };

  const rounded = (value, decimals) => Number(text(value, decimals));

  /** One significant digit of the uncertainty, two where the first is 1 or 2. */
  const decimalsFor = (uncertainty) => {
    if (!(uncertainty > 0)) {
      return 6;
    }
    let power = 0;
    while (uncertainty * 10 ** power < 10) {
      power++;
    }
    while (uncertainty * 10 ** power >= 100) {
      power--;
    }
    let two = Number(text(Number(uncertainty + "e" + power), 0));
    if (two === 100) {
      two = 10;
      power--;
    }
    return Math.max(0, Math.min(6, two < 30 ? power : power - 1));
  };

  const withUncertainty = (value, standard) => {
    const decimals = decimalsFor(2 * standard);
    return text(value, decimals) + " ± " + text(2 * standard, decimals);
  };

  const rfText = (value, standard) => {
    const decimals = Math.max(2, decimalsFor(2 * standard));
    const printed = text(value, decimals);
    return (value < 1 && printed.startsWith("1") ? printed + " (just below 1)" : printed)
      + " ± " + text(2 * standard, decimals);
  };

  /** Where a place of the straightened picture lies in the photo, by the grid between. */
  const toPhoto = (strip, x, y) => {
    const { columns, rows, xy } = strip.grid;
    const gx = Math.max(0, Math.min(columns - 1.000001, (x / strip.width) * (columns - 1)));
    const gy = Math.max(0, Math.min(rows - 1.000001, (y / strip.height) * (rows - 1)));
    const i = Math.floor(gx);
    const j = Math.floor(gy);
    const at = (column, row, k) => xy[2 * (row * columns + column) + k];
    return [0, 1].map((k) =>
      (1 - gy + j) * ((1 - gx + i) * at(i, j, k) + (gx - i) * at(i + 1, j, k))
        + (gy - j) * ((1 - gx + i) * at(i, j + 1, k) + (gx - i) * at(i + 1, j + 1, k)));
  };

  return { courseAt, slopeOf, handCourse, measureLane, text, decimalsFor, withUncertainty, rfText,
    toPhoto };
})();
