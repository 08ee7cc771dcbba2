import { chanceOver, type MinutesCurve } from "./minutesCurve";

/** What a job is reckoned to take, and what going wrong may add to it. */
export type JobMinutes = Readonly<{
  curve: MinutesCurve;
  /** Minutes on average. */
  mean: number;
  /** Chance of a harm beyond those that the curve holds already, and the minutes that it costs the shop. */
  harmChance: number;
  harmMinutes: number;
}>;

/** What an hour costs the shop, and the part of the price, in percent, that is to be left on average. */
export type Reckoning = Readonly<{ hourCost: number; margin: number }>;

/** So many steps to a unit of the shop's currency: prices are rounded up to the tenth. Chosen. */
const steps = 10;

/**
 * The price at which the margin wished for is what is left on average.
 *
 *   (mean minutes + chance of harm x its minutes) x cost of a minute / (1 - margin)
 *
 * @param mean minutes, 0 or more
 * @returns in the shop's currency, rounded up to the tenth
 * @example proposePrice({ curve: [], mean: 60, harmChance: 0, harmMinutes: 0 }, { hourCost: 54, margin: 25 }) // 72
 */
export function proposePrice(
  { mean, harmChance, harmMinutes }: JobMinutes,
  { hourCost, margin }: Reckoning,
): number {
  const cost = ((mean + harmChance * harmMinutes) * hourCost) / 60;
  const price = cost / (1 - margin / 100);
  return Math.ceil(Number((price * steps).toFixed(6))) / steps;
}

/**
 * The chance that a job costs the shop more than it is paid for it.
 *
 * @param price in the shop's currency, 0 or more
 * @returns .05...1: beyond nineteen jobs in twenty nothing is promised
 */
export function chanceOfLoss(price: number, job: JobMinutes, { hourCost }: Reckoning): number {
  return chanceOfOverrun((60 * price) / hourCost, job);
}

/** The chance that a job takes longer than so many minutes, a harm that the curve does not hold counted with it. */
export function chanceOfOverrun(minutes: number, { curve, harmChance, harmMinutes }: JobMinutes): number {
  return (
    (1 - harmChance) * chanceOver(curve, minutes) +
    harmChance * chanceOver(curve, Math.max(0, minutes - harmMinutes))
  );
}
