import { playingPa } from "./leakRate";
import type { FoundLeak } from "./readLeak";

const digits = (value: number, count: number) => Number(value.toPrecision(count));
const ml = (amount: number) => `${digits(amount, 3)} ml/min`;
const kPa = (pa: number) => `${digits(pa / 1000, 3)} kPa`;

/**
 * Says in plain words what a leak comes to.
 *
 * @returns a sentence each; the first is the rate at which leaks compare
 */
export function leakWords({
  mlPerMinute,
  times,
  read,
}: Extract<FoundLeak, { kind: "leak" }>): readonly string[] {
  return [
    `${ml(mlPerMinute)} at ${kPa(playingPa)}, about what a player blows at.`,
    ...(times === null ? [] : [`${digits(times, 2)} times as much as the sound one.`]),
    `Read at ${kPa(read.atPa)}: ${ml(read.mlPerMinute)}. Thin gaps leak in proportion to the pressure; a hole that one could see through does not.`,
  ];
}
