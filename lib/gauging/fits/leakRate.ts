/** How much air leaks at a pressure: millilitres a minute, counted at the room's pressure. */
export type LeakRate = Readonly<{ mlPerMinute: number; atPa: number }>;

/** A closed volume whose pressure over the room's fell from one reading to the next. */
export type PressureDecay = Readonly<{
  volumeMl: number;
  /** Over the room's pressure, or under it when both are negative; the first farther from it than the second. */
  firstPa: number;
  secondPa: number;
  seconds: number;
  /** Default one standard atmosphere. */
  roomPa?: number;
}>;

const standardAtmospherePa = 101_325;

/**
 * The leak of a closed volume from the fall of its pressure, all at one temperature.
 *
 *   Q = (V / p_room) (p1 - p2) / t,  held by the mean pressure of the fall (p1 - p2) / ln(p1 / p2)
 *
 * That mean is the one at which a leak in proportion to the pressure would run all the while at Q.
 *
 * @param decay see `PressureDecay`; a pressure that did not fall is no leak
 * @returns the rate, 0 or more, and the pressure at which it holds, of the readings' sign
 * @throws RangeError when volume or time is not above 0, or the pressures are not on one side of the room's and falling
 * @example leakRate({ volumeMl: 1000, firstPa: 2000, secondPa: 1000, seconds: 60 }).mlPerMinute // 9.87
 * Source: pressure change method, EN 13184; ideal gas as in 40 CFR 1065.644.
 */
export function leakRate({
  volumeMl,
  firstPa,
  secondPa,
  seconds,
  roomPa = standardAtmospherePa,
}: PressureDecay): LeakRate {
  const isFalling = firstPa * secondPa > 0 && Math.abs(secondPa) <= Math.abs(firstPa);
  if (!(volumeMl > 0 && seconds > 0 && roomPa > 0 && isFalling))
    throw new RangeError(
      `volume and time must be above 0 and the pressure fall toward the room's without passing it; got ${JSON.stringify({ volumeMl, firstPa, secondPa, seconds })}; measure again`,
    );
  const fall = Math.abs(firstPa - secondPa);
  return {
    mlPerMinute: (volumeMl / roomPa) * fall * (60 / seconds),
    atPa: fall === 0 ? firstPa : (firstPa - secondPa) / Math.log(firstPa / secondPa),
  };
}

/** 3 kPa, some 30 cm of water: about what a player blows at. Chosen, so that leaks compare. */
export const playingPa = 3000;

/**
 * A leak as it would be at another pressure, as for thin gaps: in proportion.
 *
 * @param toPa default `playingPa`
 * @returns millilitres a minute, 0 or more
 * @throws RangeError when the pressure at which it was read is 0
 * @example leakAt({ mlPerMinute: 10, atPa: 1500 }) // 20
 * Source: laminar flow, Rabie, Fluid Power Engineering, eq. 2.19.
 */
export function leakAt({ mlPerMinute, atPa }: LeakRate, toPa = playingPa): number {
  if (!(Math.abs(atPa) > 0))
    throw new RangeError(`a leak must be read at a pressure; got ${atPa} Pa; read it again`);
  return mlPerMinute * Math.abs(toPa / atPa);
}
