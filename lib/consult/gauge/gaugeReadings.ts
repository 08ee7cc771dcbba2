import { formatPartRef, type PartRef } from "../../casebook/partRef";
import { readPart } from "../../reading/parts/readPart";
import type { Reader } from "../../reading/reader";
import { readInstrument } from "../../reading/readInstrument";
import { readSwapHow, type SwapHow } from "../../reading/readSwapHow";
import { readDiameters, readLegs, readPlugs } from "../understand/readReadings";
import { readSwapTests } from "../understand/readSwapTests";
import type { GaugeAnswer } from "./gaugeAnswer";
import { gaugeBores } from "./gaugeBores";
import { gaugeLeak } from "./gaugeLeak";
import { gaugeLegs } from "./gaugeLegs";
import { gaugePlugs } from "./gaugePlugs";
import { gaugeSwaps } from "./gaugeSwaps";
import type { ReadingsInput } from "./readingsInput";

/**
 * Reads plugs, diameters, swap tests, slide legs and leaks without a case: intervals, flags, suspects, and the findings that they answer.
 * Parts that the vocabulary knows come back under its names (`2nd casing` as `casing 2`), any others as they were written.
 *
 * @param input from `readingsSchema`
 * @param reader for names and for the findings' bounds
 * @returns see `GaugeAnswer`; gauges and diameters in the order given, bores in the order first seen
 */
export function gaugeReadings(input: ReadingsInput, reader: Reader): GaugeAnswer {
  const instrument = input.instrument ? readInstrument(input.instrument, reader, "") : undefined;
  const refOf = (words: string) => readPart(words, reader, instrument);
  const nameOf = (words: string) => {
    const ref = refOf(words);
    return ref ? formatPartRef(ref) : words;
  };
  const gauges = input.gauges.map((gauge) => ({
    ...gauge,
    part: nameOf(gauge.part),
    ...(gauge.reference?.part === undefined
      ? {}
      : { reference: { ...gauge.reference, part: nameOf(gauge.reference.part) } }),
  }));
  const diameters = input.diameters.map((section) => ({ ...section, part: nameOf(section.part) }));
  const howOf = (where: string | undefined) =>
    where === undefined ? {} : readSwapHow(where, reader, instrument);
  const swaps = input.swaps.map(({ a, b, result, where }) => ({
    a: nameOf(a),
    b: nameOf(b),
    result,
    ...howOf(where),
  }));

  const plugged = gauges.map(gaugePlugs);
  const parts = [...new Set(diameters.map(({ part }) => part))];
  const mapped = parts.map((part) => ({
    part,
    ...gaugeBores(
      part,
      diameters.filter((section) => section.part === part),
    ),
  }));
  // Sections were mapped part by part; they come back in the order in which they were given.
  const queues = new Map(mapped.map(({ part, sections }) => [part, [...sections]]));
  const sections = diameters.flatMap(({ part }) => queues.get(part)?.shift() ?? []);
  const swapped = gaugeSwaps(swaps);
  const legs = input.legs.map(({ part, ...reading }) => gaugeLegs(nameOf(part), reading, reader.vocabulary));
  const leaks = input.leaks.map(gaugeLeak);
  return {
    ...(input.id === undefined ? {} : { id: input.id }),
    gauges: plugged,
    diameters: sections,
    bores: mapped.map(({ taper }) => taper),
    swaps: swapped,
    legs,
    leaks,
    findings: findingsOf(input, refOf, howOf, reader),
    flags: [
      ...[...plugged, ...sections, ...legs].flatMap(({ part, flags }) =>
        flags.map((flag) => `${part}: ${flag}`),
      ),
      ...leaks.flatMap(({ flags }) => flags.map((flag) => `leak: ${flag}`)),
      ...(swapped?.flags ?? []).map((flag) => `swaps: ${flag}`),
    ],
  };
}

function findingsOf(
  { gauges, diameters, swaps, legs }: ReadingsInput,
  refOf: (words: string) => PartRef | undefined,
  howOf: (where: string | undefined) => SwapHow,
  { vocabulary }: Reader,
): GaugeAnswer["findings"] {
  const plugs = gauges.flatMap(({ part: words, reference, piston, passes, stops }) => {
    const part = refOf(words);
    if (!part) return [];
    const reading = {
      part,
      passes,
      stops,
      ...(reference ? { reference } : {}),
      ...(piston ? { piston } : {}),
    };
    return readPlugs(reading, vocabulary).findings;
  });
  const bores = diameters.flatMap(({ part: words, readings }) => {
    const part = refOf(words);
    return part ? readDiameters(part, readings, vocabulary).findings : [];
  });
  const tests = swaps.flatMap(({ a: guest, b: host, result, where }) => {
    const [a, b] = [refOf(guest), refOf(host)];
    return a && b ? [{ a, b, result, how: howOf(where) }] : [];
  });
  const splayed = legs.flatMap(({ part: words, ...reading }) => {
    const part = refOf(words);
    return part ? readLegs(part, reading, vocabulary).findings : [];
  });
  const found = [...plugs, ...bores, ...splayed, ...readSwapTests(tests, [], vocabulary).findings].flatMap(
    ({ check, outcome, part }) => (part ? [{ check, outcome, part: formatPartRef(part) }] : []),
  );
  // A bore that is round at one depth and oval at another is oval: what is wrong anywhere counts before what is right elsewhere.
  const isWrong = ({ check, outcome }: (typeof found)[number]) =>
    vocabulary.checks.get(check)?.normal !== outcome;
  const kept = new Map<string, (typeof found)[number]>();
  for (const finding of found) {
    const key = `${finding.check} ${finding.part}`;
    const other = kept.get(key);
    if (!other || (isWrong(finding) && !isWrong(other))) kept.set(key, finding);
  }
  return [...kept.values()];
}
