import { formatPartRef, type PartRef } from "../../casebook/partRef";
import { readLeak } from "../../gauging/fits/readLeak";
import { lengthWords } from "../../gauging/lengths/lengthWords";
import { readSize, type SizeKind } from "../../gauging/lengths/readSize";
import { splayWords } from "../../gauging/slides/splayWords";
import { readPart } from "../../reading/parts/readPart";
import type { Reader } from "../../reading/reader";
import { readSwapHow } from "../../reading/readSwapHow";
import type { ReadingsInput } from "../gauge/readingsInput";
import { readLegs } from "../understand/readReadings";

type Fault = Readonly<{ fault: Readonly<{ field: string; received: string; expected: string }> }>;
type Step = Readonly<Record<string, unknown>>;
type Plugs = Readonly<{ passes: readonly string[]; stops: readonly string[]; depth?: string | undefined }>;

/**
 * Writes gauge readings as steps of a path, in the order plugs, bores, swaps, legs, leaks. Parts come out under the vocabulary's names; a
 * piston that was measured is the one that goes into the bore. Legs whose readings decide nothing make no step.
 *
 * @param instrument id of the job's instrument; may be empty
 * @returns the steps, or the first length or part that nobody could read
 */
export function stepsOfReadings(
  { gauges, diameters, swaps, legs, leaks }: ReadingsInput,
  reader: Reader,
  instrument: string,
): Readonly<{ steps: readonly Step[] }> | Fault {
  const faults: Fault[] = [];
  const fault = (received: string, expected: string) =>
    faults.push({ fault: { field: "readings", received, expected } });
  const ref = (words: string): PartRef | undefined => {
    const read = readPart(words, reader, instrument || undefined);
    if (!read) fault(`'${words}'`, "a part of the instrument, such as casing 2");
    return read;
  };
  const part = (words: string) => {
    const read = ref(words);
    return read ? formatPartRef(read) : words;
  };
  const length = (text: string, kind: SizeKind) => {
    const read = readSize(text, kind);
    if (read.kind !== "length") fault(`'${text}'`, "a length with its unit, such as .6645 in or 16.88 mm");
    return text;
  };
  const plugs = ({ passes, stops, depth }: Plugs) => ({
    ...(depth === undefined ? {} : { depth: length(depth, "depth") }),
    passes: passes.map((text) => length(text, "diameter")),
    stops: stops.map((text) => length(text, "diameter")),
  });
  const steps: Step[] = [
    ...gauges.map((gauge) => {
      const bore = ref(gauge.part);
      const { reference, piston } = gauge;
      const isGauged = reference !== undefined && reference.passes.length + reference.stops.length > 0;
      return {
        plugs: { part: bore ? formatPartRef(bore) : gauge.part, ...plugs(gauge) },
        ...(isGauged ? { reference: { part: part(reference.part ?? ""), ...plugs(reference) } } : {}),
        ...(piston
          ? {
              piston: {
                part: part(piston.part ?? guestOf(bore, reader)),
                diameter: length(piston.diameter, "diameter"),
                ...(piston.plusMinus === undefined
                  ? {}
                  : { plusMinus: length(piston.plusMinus, "uncertainty") }),
              },
            }
          : {}),
      };
    }),
    ...diameters.map(({ part: words, depth, readings }) => ({
      bore: {
        part: part(words),
        ...(depth === undefined ? {} : { depth: length(depth, "depth") }),
        readings: readings.map(({ angle, diameter }) => ({ angle, diameter: length(diameter, "diameter") })),
      },
    })),
    ...swaps.map(({ a, b, result, where }) => ({
      swap: [part(a), part(b)],
      found: result,
      ...(where === undefined ? {} : readSwapHow(where, reader, instrument || undefined)),
    })),
    ...legs.flatMap(({ part: words, ...reading }) => {
      const on = ref(words);
      // A case keeps no distances across legs: what they come to is logged, and they are told in its note.
      const { findings, result } = readLegs(on, reading, reader.vocabulary);
      const note = splayWords(result.splay, lengthWords("both")).join(" ");
      return findings.map(({ check, outcome }) => ({ check, part: part(words), found: outcome, note }));
    }),
    ...leaks.flatMap((leak) => {
      const found = readLeak(leak);
      if (found.kind === "write") fault("a leak that cannot be counted", found.faults.join("; "));
      return found.kind === "leak" ? [{ leak }] : [];
    }),
  ];
  return faults[0] ?? { steps };
}

/** The part that goes into a bore: `piston 2` for `casing 2`; the words for none where there is none. */
function guestOf(bore: PartRef | undefined, { vocabulary }: Reader): string {
  const guest = [...vocabulary.parts.values()].find(({ swapsInto }) => swapsInto === bore?.part);
  return bore && guest ? formatPartRef({ ...bore, part: guest.id }) : "what goes into it";
}
