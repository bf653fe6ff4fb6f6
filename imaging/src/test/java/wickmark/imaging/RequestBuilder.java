package wickmark.imaging;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import wickmark.imaging.photo.PhotoPoint;

/** Says one thing at a time. */
final class RequestBuilder {
  private List<String> names = List.of();
  private OptionalInt count = OptionalInt.empty();
  private ReadingRequest.@Nullable SaidScale scale;
  private List<PhotoPoint> corners = List.of();
  private ReadingRequest.@Nullable Bottom bottom;
  private List<ReadingRequest.Area> ignored = List.of();
  private ReadingRequest.@Nullable Segment baseline;
  private ReadingRequest.@Nullable Segment front;
  private List<ReadingRequest.SaidSpot> spots = List.of();
  private final Map<String, PhotoPoint> origins = new LinkedHashMap<>();

  RequestBuilder lanes(String... value) {
    names = List.of(value);
    return this;
  }

  RequestBuilder laneCount(int value) {
    count = OptionalInt.of(value);
    return this;
  }

  RequestBuilder scale(ReadingRequest.SaidScale value) {
    scale = value;
    return this;
  }

  RequestBuilder corners(List<PhotoPoint> value) {
    corners = value;
    return this;
  }

  RequestBuilder bottom(ReadingRequest.Bottom value) {
    bottom = value;
    return this;
  }

  RequestBuilder ignore(PhotoPoint from, PhotoPoint to) {
    ignored = List.of(new ReadingRequest.Area(from, to));
    return this;
  }

  RequestBuilder baseline(PhotoPoint from, PhotoPoint to) {
    baseline = new ReadingRequest.Segment(from, to);
    return this;
  }

  RequestBuilder front(PhotoPoint from, PhotoPoint to) {
    front = new ReadingRequest.Segment(from, to);
    return this;
  }

  RequestBuilder origin(String name, PhotoPoint at) {
    origins.put(name, at);
    return this;
  }

  RequestBuilder spots(ReadingRequest.SaidSpot... value) {
    spots = List.of(value);
    return this;
  }

  ReadingRequest build() {
    return new ReadingRequest(
            names,
            Set.of(),
            count,
            Optional.ofNullable(scale),
            new ReadingRequest.SaidStrip(corners, Optional.ofNullable(bottom), ignored),
            new ReadingRequest.SaidLines(
                Optional.ofNullable(baseline), Optional.ofNullable(front), origins))
        .withSpots(spots);
  }
}
