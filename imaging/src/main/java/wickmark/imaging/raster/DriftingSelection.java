package wickmark.imaging.raster;

/**
 * Order statistics of many sets of numbers, one after another, each hardly different from the one
 * before: of what lies around a place, and then around the next. The value is looked for near the
 * last one, in one pass that counts what is less and keeps what is near; only where it lies
 * elsewhere those on that side are partitioned. What comes out is that of {@link Selection}
 * whatever came before. Not for several threads.
 */
public final class DriftingSelection {
  /** Kept values among which the search is quick: with more of them the range is made narrower. */
  private static final int ENOUGH = 12;

  private double[] near = new double[0];
  private float last;

  /** Half the range around the last value in which the next is looked for. */
  private float reach = 0.01f;

  /**
   * Returns the value that stands at a rank when sorted; the values, of which none is NaN, are left
   * as they are.
   *
   * @param count how many of the values count, at least 1
   * @param rank from 0 to count − 1
   */
  public float nth(float[] values, int count, int rank) {
    if (near.length < count) {
      near = new double[count];
    }
    long low = key(last - reach);
    long high = key(last + reach);
    int less = 0;
    int kept = 0;
    for (int k = 0; k < count; k++) {
      int key = key(values[k]);
      // Without a branch: which way it goes would be chance, and a wrong guess of the processor's
      // costs as much as all the rest.
      int isLess = (int) ((key - low) >>> 63);
      int isMore = (int) ((high - key) >>> 63);
      near[kept] = values[k];
      kept += 1 - isLess - isMore;
      less += isLess;
    }
    if (rank >= less && rank < less + kept) {
      last = (float) Selection.nth(near, kept, rank - less);
      reach = kept > ENOUGH ? 0.8f * reach : kept < ENOUGH / 2 ? 1.25f * reach : reach;
    } else {
      // It is among those on one side, which are taken without a branch, too.
      boolean isLess = rank < less;
      int beyond = 0;
      for (int k = 0; k < count; k++) {
        int key = key(values[k]);
        near[beyond] = values[k];
        beyond += (int) ((isLess ? key - low : high - key) >>> 63);
      }
      last = (float) Selection.nth(near, beyond, isLess ? rank : rank - less - kept);
      reach = 2 * Math.max(reach, Float.MIN_NORMAL);
    }
    return last;
  }

  /** A number's bits as an integer that is greater where the number is. */
  private static int key(float value) {
    int bits = Float.floatToRawIntBits(value);
    return bits ^ ((bits >> 31) & 0x7fffffff);
  }
}
