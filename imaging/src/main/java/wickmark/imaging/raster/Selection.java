package wickmark.imaging.raster;

/** Order statistics without sorting all (quickselect, median of three). */
public final class Selection {
  private Selection() {}

  /**
   * Returns the value that stands at a rank when sorted; the values are reordered.
   *
   * @param count how many of the values count, at least 1
   * @param rank from 0 to count − 1
   */
  public static double nth(double[] values, int count, int rank) {
    int low = 0;
    int high = count - 1;
    while (high > low) {
      double pivot = pivot(values, low, high);
      int i = low;
      int j = high;
      while (i <= j) {
        while (values[i] < pivot) {
          i++;
        }
        while (values[j] > pivot) {
          j--;
        }
        if (i <= j) {
          double swap = values[i];
          values[i] = values[j];
          values[j] = swap;
          i++;
          j--;
        }
      }
      if (rank <= j) {
        high = j;
      } else if (rank >= i) {
        low = i;
      } else {
        return values[rank];
      }
    }
    return values[rank];
  }

  /** Returns the upper median; the values are reordered. */
  public static double median(double[] values, int count) {
    return nth(values, count, count / 2);
  }

  /**
   * Returns the upper median of every so many cells where a mask is above 0; 0 if there are none.
   */
  public static double median(Raster in, Raster mask, int every) {
    double[] v = new double[in.cells().length / every + 1];
    int n = 0;
    for (int i = 0; i < in.cells().length; i += every) {
      if (mask.cells()[i] > 0) {
        v[n++] = in.cells()[i];
      }
    }
    return n == 0 ? 0 : median(v, n);
  }

  private static double pivot(double[] v, int low, int high) {
    double a = v[low];
    double b = v[(low + high) >>> 1];
    double c = v[high];
    double less = a < b ? a : b;
    double more = a < b ? b : a;
    return c < less ? less : c > more ? more : c;
  }
}
