package wickmark.cli.report;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import wickmark.cli.measuring.StraightPicture;
import wickmark.imaging.photo.Photo;

/** The pictures of a report as files, made in other threads while the record is put together. */
public final class ReportPictures {
  private final ForkJoinTask<byte[]> photo;
  private final ForkJoinTask<byte[]> straightened;

  private ReportPictures(Photo photo, StraightPicture straightened) {
    this.photo = ForkJoinPool.commonPool().submit(() -> PictureFiles.smallJpeg(photo));
    this.straightened =
        ForkJoinPool.commonPool().submit(() -> PictureFiles.png(straightened.picture()));
  }

  /** Begins to make them. */
  public static ReportPictures begin(Photo photo, StraightPicture straightened) {
    return new ReportPictures(photo, straightened);
  }

  /** The straightened strip as a PNG file. */
  public byte[] straightenedPng() {
    return straightened.join();
  }

  /** The photo as a JPEG file of moderate size. */
  byte[] photoJpeg() {
    return photo.join();
  }
}
