import type { Case } from "../../casebook/caseFile";
import { rootCauses } from "../../casebook/rootCauses";
import type { Bench } from "../../consult/bench/bench";
import { withoutCase } from "../../consult/bench/withoutCase";
import { isFitForStudy } from "../jobs/isFitForStudy";
import { plannedAsks } from "./plannedAsks";
import { recordedAsks } from "./recordedAsks";
import { type PathScore, scorePath } from "./scorePath";
import { type WalkedCheck, walkStudy } from "./walkStudy";

/** A way through the checks of a past job, its cost, and how far it led. */
export type WayTaken = Readonly<{
  checks: readonly WalkedCheck[];
  score: PathScore;
  /** Probability of the root causes together before the first check and after each, 0..1. */
  root: readonly number[];
}>;

/** The recorded way beside the one that the bench would have gone. */
export type CheaperWay = Readonly<{
  recorded: WayTaken;
  planned: WayTaken;
  /** Minutes, risk reckoned in, that the bench's way would have saved; below 0 where it would have cost more. */
  savedMinutes: number;
  /**
   * `cheaper` where it saves at least a minute and leaves the root cause as likely, `less sure` where it saves time at the
   * price of that, `no cheaper` otherwise.
   */
  kind: "cheaper" | "less sure" | "no cheaper";
}>;

/** Less is not worth telling. Chosen. */
const leastSavedMinutes = 1;
/** Two beliefs as near as this are alike. Chosen. */
const alike = 0.05;

/**
 * Asks what a cheaper way to the same cause would have been: the checks made on that job, in the order in which the bench
 * would have asked for them, until one cause stands over 80 in 100. Both ways are reckoned by the handbook's minutes, and the
 * bench does not know the case itself.
 *
 * @returns null for a case with too little in it to say (see `isFitForStudy`)
 */
export function cheaperWay(kase: Case, bench: Bench): CheaperWay | null {
  if (!isFitForStudy(kase)) return null;
  return withoutCase(bench, kase, () => {
    const roots = rootCauses(kase);
    const take = (asks: readonly string[]): WayTaken => {
      const { checks, beliefs } = walkStudy(kase, asks, bench);
      const root = beliefs.map(({ causes }) =>
        roots.reduce((sum, id) => sum + (causes[bench.model.causes.indexOf(id)] ?? 0), 0),
      );
      return { checks, score: scorePath(checks), root };
    };
    const recorded = take(recordedAsks(kase, bench.vocabulary));
    const planned = take(plannedAsks(kase, bench));
    const cost = ({ score }: WayTaken) => score.minutes + score.riskMinutes;
    const savedMinutes = cost(recorded) - cost(planned);
    const isAsSure = (planned.root.at(-1) ?? 0) >= (recorded.root.at(-1) ?? 0) - alike;
    const kind =
      savedMinutes < leastSavedMinutes ? "no cheaper" : isAsSure ? "cheaper" : ("less sure" as const);
    return { recorded, planned, savedMinutes, kind };
  });
}
