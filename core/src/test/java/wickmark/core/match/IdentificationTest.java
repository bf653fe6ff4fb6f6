package wickmark.core.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wickmark.core.match.Lanes.BLUE;
import static wickmark.core.match.Lanes.GREEN;
import static wickmark.core.match.Lanes.ORANGE;
import static wickmark.core.match.Lanes.RED;
import static wickmark.core.match.Lanes.YELLOW;
import static wickmark.core.match.Lanes.names;
import static wickmark.core.match.Lanes.read;
import static wickmark.core.match.Lanes.reference;
import static wickmark.core.match.Lanes.unknown;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.colour.DyeAbsorbance;
import wickmark.core.match.Lanes.Dye;

class IdentificationTest {

  // GCSE lesson on Rf values: knowns at Rf 0.5, 0.7 and 0.9, unknown at 0.5 and 0.9 = X + Z, not Y.
  @Test
  void explainsTheSchoolbookMixture() {
    UnknownReading reading =
        read(
            reference("X1", Dye.of(RED, 0.5)),
            reference("Y1", Dye.of(RED, 0.7)),
            reference("Z1", Dye.of(RED, 0.9)),
            unknown(Dye.of(RED, 0.5), Dye.of(RED, 0.9)));

    assertThat(names(reading)).containsExactly(List.of("X1", "Z1"));
    assertThat(reading.unexplainedSpots()).isEmpty();
    assertThat(reading.ruledOut())
        .extracting(UnknownReading.RuledOut::reference)
        .containsExactly("Y1");
    assertThat(reading.findings().get(0))
        .isEqualTo(
            "X is consistent with X1 and Z1. Every spot of these has a counterpart in X, in Rf and "
                + "in colour.");
  }

  // Student report, metal ions in propanone and hydrochloric acid: iron 0.98, copper 0.48, nickel
  // 0.18; unknown 0.96 and 0.50: iron and copper.
  @Test
  void explainsThePublishedMetalIons() {
    UnknownReading reading =
        read(
            reference("iron", Dye.of(ORANGE, 0.98)),
            reference("copper", Dye.of(BLUE, 0.48)),
            reference("nickel", Dye.of(RED, 0.18)),
            unknown(Dye.of(ORANGE, 0.96), Dye.of(BLUE, 0.50)));

    assertThat(names(reading)).containsExactly(List.of("copper", "iron"));
  }

  @Test
  void namesTheMatchingSpots() {
    UnknownReading reading =
        read(reference("A", Dye.of(RED, 0.30)), unknown(Dye.of(RED, 0.31), Dye.of(BLUE, 0.8)));

    UnknownReading.Match match = reading.explanations().get(0).matches().get(0);
    assertThat(match.unknownSpot()).isEqualTo(2);
    assertThat(match.referenceSpot()).isEqualTo(1);
    assertThat(match.rfDifference()).isCloseTo(0.01, within(1e-9));
    assertThat(match.colourDifference()).isCloseTo(0, within(0.01));
  }

  @Nested
  class OfReferencesThatAreMixtures {

    @Test
    void wantsEverySpotOfAReference() {
      UnknownReading reading =
          read(
              reference("A", Dye.of(RED, 0.3)),
              reference("B", Dye.of(RED, 0.3), Dye.of(BLUE, 0.8)),
              unknown(Dye.of(RED, 0.3), Dye.of(YELLOW, 0.6)));

      assertThat(names(reading)).containsExactly(List.of("A"));
      assertThat(reading.ruledOut()).hasSize(1);
      assertThat(reading.ruledOut().get(0).reason())
          .isEqualTo(
              "its spot 1 (blue, Rf 0.80) has no counterpart: X has nothing of its colour, and "
                  + "nothing at its height");
    }

    @Test
    void prefersTheOneThatExplainsAll() {
      UnknownReading reading =
          read(
              reference("A", Dye.of(RED, 0.3)),
              reference("B", Dye.of(RED, 0.3), Dye.of(BLUE, 0.8)),
              unknown(Dye.of(RED, 0.3), Dye.of(BLUE, 0.8)));

      assertThat(names(reading)).containsExactly(List.of("B"));
      assertThat(reading.findings())
          .contains(
              "X is consistent with B alone. Every spot of it has a counterpart in X, in Rf and in "
                  + "colour.",
              "A cannot be ruled out: all its spots coincide with spots that are explained without "
                  + "it.")
          .anyMatch(finding -> finding.startsWith("One solvent cannot tell"));
    }

    @Test
    void forgivesASpotThatWouldBeTooPaleToSee() {
      UnknownReading reading =
          read(
              reference("A", Dye.of(RED, 0.3).deep(0.9), Dye.of(BLUE, 0.8).deep(0.1)),
              unknown(Dye.of(RED, 0.3).deep(0.2)));

      assertThat(names(reading)).containsExactly(List.of("A"));
      assertThat(reading.findings()).anyMatch(finding -> finding.contains("too pale to see"));
    }
  }

  @Test
  void leavesADyeUnexplainedThatNoReferenceHas() {
    UnknownReading reading =
        read(
            reference("A", Dye.of(RED, 0.3)),
            reference("B", Dye.of(BLUE, 0.8)),
            unknown(Dye.of(RED, 0.31), Dye.of(GREEN, 0.55), Dye.of(BLUE, 0.79)));

    assertThat(names(reading)).containsExactly(List.of("A", "B"));
    assertThat(reading.unexplainedSpots()).containsExactly(2);
    assertThat(reading.findings())
        .contains("Spot 2 of X (green, Rf 0.55) is not explained: no reference has such a dye.");
  }

  @Test
  void saysBothWhenTwoReferencesAreEquallyGood() {
    UnknownReading reading =
        read(
            reference("A", Dye.of(RED, 0.30)),
            reference("B", Dye.of(RED, 0.305)),
            reference("C", Dye.of(BLUE, 0.8)),
            unknown(Dye.of(RED, 0.302), Dye.of(BLUE, 0.8)));

    assertThat(names(reading)).containsExactlyInAnyOrder(List.of("A", "C"), List.of("B", "C"));
    assertThat(reading.findings().get(0))
        .contains("more than one way, equally well", "This strip cannot tell which");
  }

  @Test
  void isNotMisledByTheSameRfInAnotherColour() {
    UnknownReading reading = read(reference("A", Dye.of(YELLOW, 0.5)), unknown(Dye.of(BLUE, 0.5)));

    assertThat(reading.explanations()).isEmpty();
    assertThat(reading.unexplainedSpots()).containsExactly(1);
    assertThat(reading.ruledOut().get(0).reason())
        .contains("travels as far but is of another colour", "blue against yellow");
  }

  @Test
  void recognisesAPaleSpotOfTheSameDye() {
    UnknownReading reading =
        read(
            reference("A", Dye.of(RED, 0.5).deep(1.0)),
            reference("B", Dye.of(ORANGE, 0.5).deep(1.0)),
            unknown(Dye.of(ORANGE, 0.5).deep(0.12)));

    assertThat(names(reading)).containsExactly(List.of("B"));
  }

  @Test
  void isMoreTolerantWhereASpotOverlaps() {
    Dye changed = Dye.of(new DyeAbsorbance(0.15, 0.42, 1), 0.515);
    LaneSignature orange = reference("A", Dye.of(ORANGE, 0.48));

    assertThat(read(orange, unknown(changed)).explanations()).isEmpty();
    assertThat(names(read(orange, unknown(changed.flagged(SpotFlag.OVERLAPPED)))))
        .containsExactly(List.of("A"));
  }

  @Nested
  class OfSpotsThatRanIntoOne {
    private final LaneSignature blue = reference("A", Dye.of(BLUE, 0.52));
    private final LaneSignature yellow = reference("B", Dye.of(YELLOW, 0.46));
    private final DyeAbsorbance mixed = new DyeAbsorbance(0.51, 0.33, 0.55);

    @Test
    void seesBothInTheirMixedColour() {
      UnknownReading reading = read(blue, yellow, unknown(Dye.of(mixed, 0.49).tall(0.08)));

      assertThat(names(reading)).containsExactly(List.of("A", "B"));
      assertThat(reading.unexplainedSpots()).isEmpty();
      assertThat(reading.blendedSpots()).containsExactly(1);
      assertThat(reading.explanations().get(0).matches())
          .extracting(UnknownReading.Match::unknownSpot)
          .containsExactly(1, 1);
      assertThat(reading.findings())
          .contains(
              "Spot 1 of X looks like two that ran into one: spot 1 of A (blue, Rf 0.52) and spot 1"
                  + " of B (yellow, Rf 0.46) together give its colour.");
    }

    @Test
    void doesNotInventThemInASmallSpotBetweenThem() {
      assertThat(read(blue, yellow, unknown(Dye.of(mixed, 0.49).tall(0.02))).explanations())
          .isEmpty();
    }

    @Test
    void doesNotInventThemInAnotherColour() {
      assertThat(read(blue, yellow, unknown(Dye.of(RED, 0.49).tall(0.08))).explanations())
          .isEmpty();
    }
  }

  @Test
  void putsASpotOfAReferenceTogetherThatFellApart() {
    LaneSignature inTwo =
        reference(
            "A",
            Dye.of(BLUE, 0.875).flagged(SpotFlag.OVERLAPPED),
            Dye.of(BLUE, 0.838).flagged(SpotFlag.OVERLAPPED));

    assertThat(names(read(inTwo, unknown(Dye.of(BLUE, 0.855))))).containsExactly(List.of("A"));
  }

  @Test
  void doesNotLetASpotBelowTheLimitCarryAReference() {
    LaneSignature a = reference("A", Dye.of(RED, 0.7));
    LaneSignature b = reference("B", Dye.of(BLUE, 0.3));

    assertThat(names(read(a, b, unknown(Dye.of(RED, 0.7), Dye.of(BLUE, 0.3).deep(0.04)))))
        .containsExactly(List.of("A"));
  }

  @Test
  void doesNotExplainAStrongSpotByATraceInAReference() {
    LaneSignature a = reference("A", Dye.of(RED, 0.7).deep(0.9), Dye.of(BLUE, 0.3).deep(0.08));
    LaneSignature b = reference("B", Dye.of(BLUE, 0.3));

    assertThat(names(read(a, b, unknown(Dye.of(RED, 0.7).deep(0.2), Dye.of(BLUE, 0.3).deep(0.5)))))
        .containsExactly(List.of("A", "B"));
  }

  @Test
  void takesAnyColourOnTheBaselineForResidue() {
    assertThat(
            names(
                read(
                    reference("A", Dye.of(RED, 0.5), Dye.of(BLUE, 0.01)),
                    unknown(Dye.of(RED, 0.5)))))
        .containsExactly(List.of("A"));
  }

  @Test
  void forgivesADoubtfulSpotOfAReference() {
    LaneSignature unknown = unknown(Dye.of(RED, 0.5));

    assertThat(
            read(reference("A", Dye.of(RED, 0.5), Dye.of(BLUE, 0.9).doubtful(0.2)), unknown)
                .explanations())
        .isNotEmpty();
    assertThat(
            read(reference("A", Dye.of(RED, 0.5), Dye.of(BLUE, 0.9).doubtful(1)), unknown)
                .explanations())
        .isEmpty();
  }

  @Test
  void doesNotCompareWhatStayedAtTheOrigin() {
    UnknownReading reading =
        read(
            reference("A", Dye.of(RED, 0.5)),
            unknown(Dye.of(RED, 0.5), Dye.of(BLUE, 0.0).flagged(SpotFlag.AT_ORIGIN)));

    assertThat(names(reading)).containsExactly(List.of("A"));
    assertThat(reading.unexplainedSpots()).isEmpty();
  }

  @Nested
  class OfALaneThatRanShort {
    private final LaneSignature a = reference("A", Dye.of(RED, 0.4), Dye.of(YELLOW, 0.6));
    private final LaneSignature b = reference("B", Dye.of(BLUE, 0.9));

    @Test
    void saysSoAndClaimsNoMatch() {
      UnknownReading reading =
          read(a, b, unknown(Dye.of(RED, 0.32), Dye.of(YELLOW, 0.48), Dye.of(BLUE, 0.72)));

      assertThat(reading.explanations()).isEmpty();
      assertThat(reading.runFactor().orElseThrow()).isCloseTo(0.8, within(0.005));
      assertThat(reading.findings())
          .singleElement()
          .asString()
          .contains("colours of A and B", "shorter by the same factor, 0.80", "run short");
    }

    @Test
    void isNotClaimedForOneSpot() {
      assertThat(read(a, b, unknown(Dye.of(BLUE, 0.72))).runFactor()).isEmpty();
    }

    @Test
    void isNotClaimedWhereTheColoursDoNotComeBack() {
      assertThat(read(a, b, unknown(Dye.of(GREEN, 0.32), Dye.of(BLUE, 0.48))).runFactor())
          .isEmpty();
    }
  }

  @Test
  void learnsTheRepeatabilityFromRepeatedReferences() {
    LaneSignature unknown = unknown(Dye.of(RED, 0.54));
    LaneSignature a = reference("A", Dye.of(RED, 0.49));

    assertThat(read(a, unknown).explanations()).isEmpty();
    assertThat(
            names(
                read(
                    a,
                    unknown,
                    reference("C", Dye.of(BLUE, 0.70), Dye.of(GREEN, 0.80)),
                    reference("C", Dye.of(BLUE, 0.74), Dye.of(GREEN, 0.84)))))
        .containsExactly(List.of("A"));
  }

  @Test
  void namesARepeatedReferenceOnce() {
    UnknownReading reading =
        read(
            reference("A", Dye.of(RED, 0.50)),
            reference("A", Dye.of(RED, 0.51)),
            unknown(Dye.of(RED, 0.51)));

    assertThat(names(reading)).containsExactly(List.of("A"));
    assertThat(reading.explanations().get(0).score()).isGreaterThan(0.9);
    assertThat(reading.ruledOut()).isEmpty();
  }

  @Test
  void saysWhenThereIsNothingToCompareWith() {
    assertThat(read(unknown(Dye.of(RED, 0.5))).findings())
        .containsExactly("There is no reference on this strip to compare X with.");
  }

  @Test
  void copesWithManyReferences() {
    List<LaneSignature> lanes = new ArrayList<>();
    List<Dye> all = new ArrayList<>();
    for (int i = 0; i < 15; i++) {
      Dye dye = Dye.of(i % 2 == 0 ? RED : BLUE, 0.05 + 0.06 * i);
      lanes.add(reference("R" + i, dye));
      all.add(dye);
    }
    lanes.add(unknown(all.get(3), all.get(8)));

    assertThat(names(Identification.of(lanes, MatchSettings.defaults()).get(0)))
        .containsExactly(List.of("R3", "R8"));
  }

  @Test
  void givesAScoreAndAMargin() {
    UnknownReading reading = read(reference("A", Dye.of(RED, 0.5)), unknown(Dye.of(RED, 0.5)));

    assertThat(reading.explanations().get(0).score()).isBetween(0.95, 1.0);
    assertThat(reading.timesLikelier().orElseThrow()).isGreaterThan(100);
  }

  @Test
  void readsALaneByItsSpots() {
    assertThat(LaneReading.of(unknown(Dye.of(RED, 0.5))))
        .isEqualTo("one spot in this solvent: consistent with a single dye");
    assertThat(LaneReading.of(unknown(Dye.of(RED, 0.5), Dye.of(BLUE, 0.6), Dye.of(GREEN, 0.8))))
        .isEqualTo("a mixture of at least 3 dyes");
    assertThat(LaneReading.of(unknown())).isEqualTo("no spot found");
    assertThat(LaneReading.of(unknown(Dye.of(BLUE, 0).flagged(SpotFlag.AT_ORIGIN))))
        .startsWith("all of the colour stayed at the origin");
  }
}
