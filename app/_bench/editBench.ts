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

/** The bench with one swap tried, tried again, or (result null) not tried. */
export function setSwap(
  bench: BenchQuery,
  pair: Pick<TappedSwap, "guest" | "host">,
  tried: Pick<TappedSwap, "result" | "where"> | null,
): BenchQuery {
  const others = bench.swaps.filter(({ guest, host }) => guest !== pair.guest || host !== pair.host);
  return { ...bench, swaps: tried ? [...others, { ...pair, ...tried }] : others };
}
