package wickmark.testdata.set;

import java.util.Map;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.picture.PictureFile;
import wickmark.testdata.picture.PictureTags;

/**
 * A drawn picture and how it is to be written.
 *
 * @param quality JPEG quality, 1 to 100; 0 for a PNG
 * @param scene how it was drawn, for its truth file
 */
record Shot(DrawnPicture drawn, PictureTags tags, int quality, Map<String, Object> scene) {

  String suffix() {
    return quality == 0 ? ".png" : ".jpg";
  }

  byte[] file() {
    return quality == 0
        ? PictureFile.png(drawn.picture(), tags)
        : PictureFile.jpeg(drawn.picture(), quality, tags);
  }
}
