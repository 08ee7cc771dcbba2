import type { Answer } from "@/lib/consult/answer";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import type { BenchQuery } from "./benchQuery";
import { leaveOut, setFinding, takeBack } from "./editBench";

/** A tapped place says that the valve is caught there; named here because one tap gives two findings. */
const caught = { check: "valve-travel", outcome: "hangs" } as const;

/**
 * The bench after a tap on a place in the stroke: where it catches, and that it does.
 * A tap on the place that holds takes it away again.
 *
 * @param place the outcome of the place check
 * @param part the valve, such as `valve 3`
 */
export function tapPlace(
  bench: BenchQuery,
  understood: Answer["understood"],
  { checks }: Pick<Vocabulary, "checks">,
  { check, outcome, part }: Readonly<{ check: string; outcome: string; part: string }>,
): BenchQuery {
  const held = understood.find((finding) => finding.check === check && finding.part === part);
  if (held?.outcome === outcome) {
    return held.source === "says" ? leaveOut(bench, { check, part }) : takeBack(bench, { check, part });
  }
  const placed = setFinding(bench, { check, outcome, part });
  const knowsTravel = understood.some((finding) => finding.check === caught.check && finding.part === part);
  const canSay = checks.get(caught.check)?.outcomes.some(({ id }) => id === caught.outcome);
  return knowsTravel || !canSay ? placed : setFinding(placed, { ...caught, part });
}
