import type { GaugeAnswer } from "@/lib/consult/gauge/gaugeAnswer";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/**
 * What readings say, in words: `casing 3: tight place here; 2 swaps`. Empty where they say nothing.
 *
 * @param swaps how many pairs were tried
 */
export function foundWords(
  findings: GaugeAnswer["findings"],
  swaps: number,
  { checks }: Pick<Vocabulary, "checks">,
): string {
  return [
    ...findings.map(({ check, outcome, part }) => {
      const label = checks.get(check)?.outcomes.find(({ id }) => id === outcome)?.label ?? outcome;
      return `${part}: ${label}`;
    }),
    ...(swaps > 0 ? [`${swaps} ${swaps === 1 ? "swap" : "swaps"}`] : []),
  ]
    .join("; ")
    .toLowerCase();
}
