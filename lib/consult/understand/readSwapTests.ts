import { formatPartRef, type PartRef } from "../../casebook/partRef";
import { readSwaps, type SwapReading } from "../../diagnosis/swaps/readSwaps";
import type { SwapObservation } from "../../diagnosis/swaps/swapObservation";
import type { SwapHow } from "../../reading/readSwapHow";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { SwapAnswer, SwapTried } from "../answer";
import type { Finding } from "../finding";
import { answeringOutcome } from "./answeringOutcome";
import type { ReadingOf } from "./readReadings";
import { swapHowWords } from "./swapHowWords";
import { swapName } from "./swapName";
import { swapSplits } from "./swapSplits";

/** One swap test with its parts understood, what its result depended on, and where it was taken from. */
export type SwapTest = Readonly<{
  a: PartRef;
  b: PartRef;
  result: SwapObservation["result"];
  how: SwapHow;
  /** Default: it was given as a swap test. */
  source?: SwapTried["source"];
  /** Start and end of the words in `says`, where they came from there. */
  span?: readonly [number, number];
}>;

/**
 * Reads swap tests: which part is left in suspicion, and the finding that this answers. How a valve travels is how its
 * own piston runs in its own casing, so findings about it count as tests of the pairs that were swapped.
 *
 * @param leftOut names of pairs, as `swapName` gives them, that travel is to say nothing of
 */
export function readSwapTests(
  tests: readonly SwapTest[],
  findings: readonly Finding[],
  vocabulary: Vocabulary,
  leftOut: ReadonlySet<string> = new Set(),
): ReadingOf<SwapAnswer | null> {
  const tried = tests.filter(({ a, b }) => formatPartRef(a) !== formatPartRef(b));
  if (tried.length === 0) return { result: null, findings: [] };
  const own = ownPairs(tried, findings, vocabulary).filter((test) => !leftOut.has(swapName(test)));
  const pairs = [...tried, ...own];
  const reading = readSwaps(
    pairs.map(({ a, b, result, how }) => ({ a: formatPartRef(a), b: formatPartRef(b), result, ...how })),
  );
  const next = reading.nextSwap;
  return {
    findings: swapFinding(reading, pairs, vocabulary),
    result: {
      tests: pairs.map((test) => showTest(test, vocabulary)),
      suspects: reading.suspects.map(({ part, standing }) => ({ part, standing })),
      splits: swapSplits(reading.suspects),
      nextSwap: next ? [next.a, next.b] : null,
      contradictions: reading.contradictions.map(
        ({ a, b, results }) => `${a} in ${b} was ${results.join(" and ")}: try it again`,
      ),
    },
  };
}

/** How the swapped parts run in their own places, as far as findings tell. */
function ownPairs(
  tests: readonly SwapTest[],
  findings: readonly Finding[],
  { checks }: Vocabulary,
): SwapTest[] {
  const [guest, host] = [tests[0]?.a.part, tests[0]?.b.part];
  if (guest === undefined || host === undefined) return [];
  const travels = findings.flatMap(({ check: id, outcome, part }) => {
    const check = checks.get(id);
    return check?.reads === "travel" && part ? [{ part, free: outcome === check.normal }] : [];
  });
  const named = new Set(travels.flatMap(({ part }) => part.place ?? []));
  const swapped = new Set(tests.flatMap(({ a, b }) => [a.place, b.place]));
  return [...swapped].flatMap((place) => {
    if (place === undefined) return [];
    const travel =
      travels.find(({ part }) => part.place === place) ??
      (named.has(place) ? undefined : travels.find(({ part }) => part.others));
    const own = (part: string): PartRef => ({ part, place, others: false });
    const isTried = tests.some(({ a, b }) => a.place === place && b.place === place);
    if (!travel || isTried) return [];
    const result = travel.free ? "free" : "sticks";
    const how = travel.free ? {} : strokeOf(place, host, findings, checks);
    return [{ a: own(guest), b: own(host), result, how, source: "travel" }];
  });
}

/** Where a valve catches and which way, as findings tell; those on the host tell of another's guest that was tried in it. */
function strokeOf(
  place: number,
  host: string,
  findings: readonly Finding[],
  checks: Vocabulary["checks"],
): SwapHow {
  const told = (reads: "place" | "way") =>
    findings.find(
      ({ check, part }) =>
        checks.get(check)?.reads === reads && part?.place === place && part.part !== host && !part.others,
    )?.outcome;
  const [where, way] = [told("place"), told("way")];
  return { ...(where === undefined ? {} : { where }), ...(way === undefined ? {} : { way }) };
}

function swapFinding(reading: SwapReading, tests: readonly SwapTest[], vocabulary: Vocabulary): Finding[] {
  const suspects = reading.suspects.filter(({ standing }) => standing === "suspect").map(({ part }) => part);
  const guests = tests.map(({ a }) => a).filter((ref) => suspects.includes(formatPartRef(ref)));
  const hosts = tests.map(({ b }) => b).filter((ref) => suspects.includes(formatPartRef(ref)));
  const tried = new Set(tests.map(({ a, b }) => `${formatPartRef(a)} ${formatPartRef(b)}`)).size;
  if (tried < 2) return [];
  const [guest] = guests;
  const [host] = hosts;
  const suspect =
    reading.unsuited.length > 0 ? "pair" : guest && !host ? "guest" : host && !guest ? "host" : undefined;
  const part = suspect === "guest" ? guest : (host ?? tests[0]?.b);
  if (suspect === undefined || part === undefined) return [];
  return answeringOutcome(vocabulary, "swap", (outcome) => outcome.measured?.suspect === suspect, part);
}

function showTest(
  { a, b, result, how, source = "swaps", span }: SwapTest,
  vocabulary: Vocabulary,
): SwapTried {
  const { where = null, way = null, turned = null } = how;
  return {
    a: formatPartRef(a),
    b: formatPartRef(b),
    result,
    where,
    way,
    turned,
    depended: swapHowWords(how, vocabulary),
    source,
    ...(span ? { span } : {}),
  };
}
