import { roundMm } from "../lengths/roundMm";

/** How far two legs stand apart at one place down the slide. */
export type AcrossLegs = Readonly<{ placeMm: number; acrossMm: number }>;

/** How two legs that should run side by side stand to one another. */
export type Splay =
  | Readonly<{ kind: "too few places"; write: string }>
  | Readonly<{
      kind: "measured";
      fromMm: number;
      toMm: number;
      /** How much wider the far end stands than the near one: at least, and at most; negative is pinched. */
      leastMm: number;
      mostMm: number;
      /** Between the two legs, at the middle of the bounds; negative is pinched. */
      angleDeg: number;
      /** The place between that stands farthest off the straight line from end to end; positive bows out. Null with two places. */
      bow: Readonly<{ placeMm: number; leastMm: number; mostMm: number }> | null;
    }>;

/**
 * Reads the splay of a slide's legs from the distance across them at two places or more.
 *
 *   change = across(far) - across(near);  bow = across(x) - the line through both ends at x
 *
 * Each distance may be out by `plusMinusMm` either way, so the change by twice that, and a bow between by twice that at the most.
 *
 * @param readings in any order; of several at one place the mean counts
 * @param plusMinusMm 0 or more; default 0
 * @throws RangeError when a place or distance is not finite, or the give or take is negative
 * @example splay([{ placeMm: 0, acrossMm: 80 }, { placeMm: 600, acrossMm: 80.5 }]) // least and most 0.5
 * Source: interval arithmetic (Moore 1966); where to measure, common practice.
 */
export function splay(readings: readonly AcrossLegs[], plusMinusMm = 0): Splay {
  const isSound = readings.every(
    ({ placeMm, acrossMm }) => Number.isFinite(placeMm) && Number.isFinite(acrossMm),
  );
  if (!isSound || !(plusMinusMm >= 0))
    throw new RangeError(
      `places and distances must be finite and the give or take 0 or more; got ${JSON.stringify({ readings, plusMinusMm })}; measure again`,
    );
  const places = [...new Set(readings.map(({ placeMm }) => placeMm))].sort((a, b) => a - b);
  const [fromMm, toMm] = [places[0], places.at(-1)];
  if (fromMm === undefined || toMm === undefined || fromMm === toMm)
    return { kind: "too few places", write: "the distance at two places or more, each with its place" };
  const across = (placeMm: number) => {
    const at = readings.filter((reading) => reading.placeMm === placeMm);
    return at.reduce((sum, { acrossMm }) => sum + acrossMm, 0) / at.length;
  };
  const [near, far] = [across(fromMm), across(toMm)];
  const doubt = 2 * plusMinusMm;
  const bows = places.slice(1, -1).map((placeMm) => {
    const share = (placeMm - fromMm) / (toMm - fromMm);
    return { placeMm, offMm: across(placeMm) - near - share * (far - near) };
  });
  const [worst] = bows.sort((a, b) => Math.abs(b.offMm) - Math.abs(a.offMm));
  return {
    kind: "measured",
    fromMm,
    toMm,
    leastMm: roundMm(far - near - doubt),
    mostMm: roundMm(far - near + doubt),
    angleDeg: (Math.atan2(far - near, toMm - fromMm) * 180) / Math.PI,
    bow: worst
      ? {
          placeMm: worst.placeMm,
          leastMm: roundMm(worst.offMm - doubt),
          mostMm: roundMm(worst.offMm + doubt),
        }
      : null,
  };
}
