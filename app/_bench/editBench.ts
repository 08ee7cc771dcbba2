import type { BenchQuery, TappedFinding, TappedSwap } from "./benchQuery";

/** The name by which a finding is left out: `check`, or `check part`. */
const findingName = ({ check, part }: Readonly<{ check: string; part: string | null }>) =>
  part ? `${check} ${part}` : check;

/** The bench with a finding tapped in; it takes the place of what was found before by the same check on the same part. */
export function setFinding(bench: BenchQuery, finding: TappedFinding): BenchQuery {
  const name = findingName(finding);
  return {
    ...bench,
    findings: [...bench.findings.filter((other) => findingName(other) !== name), finding],
    leftOut: bench.leftOut.filter((other) => other !== name),
  };
}

/** The bench without what was tapped for a check on a part; what the words say of it holds again. */
export function takeBack(bench: BenchQuery, finding: Pick<TappedFinding, "check" | "part">): BenchQuery {
  const name = findingName(finding);
  return { ...bench, findings: bench.findings.filter((other) => findingName(other) !== name) };
}

/** The bench with a finding left out, however it came in. */
export function leaveOut(bench: BenchQuery, finding: Pick<TappedFinding, "check" | "part">): BenchQuery {
  const name = findingName(finding);
  const without = takeBack(bench, finding);
  return without.leftOut.includes(name) ? without : { ...without, leftOut: [...without.leftOut, name] };
}

/** The bench with a finding counted again that had been left out. */
export function putBack(bench: BenchQuery, name: string): BenchQuery {
  return { ...bench, leftOut: bench.leftOut.filter((other) => other !== name) };
}

const swapName = ({ guest, host }: SwapPair) => `swap ${guest} in ${host}`;

/** The pair that a swap tried: guest in host's place. */
export type SwapPair = Pick<TappedSwap, "guest" | "host">;

/** The bench with one swap tried, or tried again: it takes the place of whatever was known of that pair. */
export function setSwap(bench: BenchQuery, swap: TappedSwap): BenchQuery {
  return {
    ...bench,
    swaps: [...takeBackSwap(bench, swap).swaps, swap],
    leftOut: bench.leftOut.filter((other) => other !== swapName(swap)),
  };
}

/** The bench without a swap that was tapped; what the words say of that pair holds again. */
export function takeBackSwap(bench: BenchQuery, { guest, host }: SwapPair): BenchQuery {
  return { ...bench, swaps: bench.swaps.filter((other) => other.guest !== guest || other.host !== host) };
}

/** The bench with a pair not tried, whatever the words say of it. */
export function leaveOutSwap(bench: BenchQuery, pair: SwapPair): BenchQuery {
  const leftOut = bench.leftOut.filter((other) => other !== swapName(pair));
  return { ...takeBackSwap(bench, pair), leftOut: [...leftOut, swapName(pair)] };
}
