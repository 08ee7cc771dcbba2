/** What a written amount came to, or what to write instead. */
export type ReadAmount =
  | Readonly<{ kind: "amount"; value: number }>
  | Readonly<{ kind: "unreadable"; got: string; write: string }>;

/** Units by the way they are written, lower case, each as so many of the one that is computed in. */
type Units = Readonly<{ per: ReadonlyMap<string, number>; such: string }>;

/** Pascals. Source: SI and NIST SP 811, appendix B.8 (conventional water and inch of water; psi). */
export const pressureUnits: Units = {
  per: new Map([
    ["pa", 1],
    ["hpa", 100],
    ["mbar", 100],
    ["kpa", 1000],
    ["mmh2o", 9.80665],
    ["cmh2o", 98.0665],
    ["inh2o", 249.0889],
    ["psi", 6894.757],
  ]),
  such: "30 mbar, 3 kPa, 30 cmH2O or 12 inH2O",
};

/** Millilitres. */
export const volumeUnits: Units = {
  per: new Map([
    ["ml", 1],
    ["cc", 1],
    ["cm3", 1],
    ["l", 1000],
    ["in3", 16.387064],
  ]),
  such: "450 ml, 1.2 l or 28 in3",
};

/** Seconds. */
export const timeUnits: Units = {
  per: new Map([
    ["s", 1],
    ["sec", 1],
    ["min", 60],
  ]),
  such: "10 s or 2 min",
};

/** Millilitres a minute. */
export const flowUnits: Units = {
  per: new Map([
    ["ml/min", 1],
    ["cc/min", 1],
    ["l/min", 1000],
    ["ml/s", 60],
  ]),
  such: "40 ml/min or 0.4 l/min",
};

/**
 * Reads an amount with its unit. A unit is never guessed: a bare number is asked about.
 *
 * @param text such as `30 mbar`, `1,2 l`, `-12 inH2O`
 * @returns in the unit that is computed in; it never throws
 * @example readAmount("3 kPa", pressureUnits) // { kind: "amount", value: 3000 }
 */
export function readAmount(text: string, { per, such }: Units): ReadAmount {
  const [, number = "", unit = ""] = /^([-−]?\d*[.,]?\d+)\s*(\S+)$/.exec(text.trim()) ?? [];
  const factor = per.get(unit.toLowerCase().replace("³", "3").replace("₂", "2"));
  const amount = Number(number.replace(",", ".").replace("−", "-"));
  if (number === "" || factor === undefined || !Number.isFinite(amount))
    return { kind: "unreadable", got: text, write: `a number with its unit, such as ${such}` };
  return { kind: "amount", value: amount * factor };
}
