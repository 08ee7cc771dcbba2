import type { Case } from "../../casebook/caseFile";
import { rootCauses } from "../../casebook/rootCauses";
import type { Bench } from "../../consult/bench/bench";
import { withoutCase } from "../../consult/bench/withoutCase";
import type { Posterior } from "../../diagnosis/posterior";
import { appliesTo } from "../../vocabulary/appliesTo";
import { brierScore, type NamedCause } from "../answer/brierScore";
import { judgeRepair, type RepairJudged } from "../answer/judgeRepair";
import { type BeliefLine, beliefLines } from "./beliefLines";
import { type CheckTooSoon, checksTooSoon } from "./checksTooSoon";
import { plannedAsks } from "./plannedAsks";
import { recordedAsks } from "./recordedAsks";
import { type PathScore, scorePath } from "./scorePath";
import { type WalkedCheck, walkStudy } from "./walkStudy";
import { type EnoughKnown, whenEnough } from "./whenEnough";

/** What the apprentice did and said: checks in their order, causes with how sure, the repair and what to check before it. */
export type StudyAnswer = Readonly<{
  asked: readonly string[];
  named: readonly NamedCause[];
  repair: string | undefined;
  first: string | undefined;
}>;

/** A way through the checks with what it cost and taught. */
export type ReviewedPath = Readonly<{ checks: readonly WalkedCheck[]; score: PathScore }>;

/** Everything that is told once the apprentice has answered. */
export type StudyReview = Readonly<{
  roots: readonly string[];
  /** The cause put first was a root; a root was among those named; or neither. */
  verdict: "right" | "among them" | "missed";
  brier: number;
  /** What the evidence asked for would have scored, read by handbook and other cases. */
  evidenceBrier: number;
  own: ReviewedPath;
  recorded: ReviewedPath;
  planned: ReviewedPath;
  lines: readonly BeliefLine[];
  tooSoon: readonly CheckTooSoon[];
  enough: EnoughKnown | null;
  repair: RepairJudged;
}>;

/** Looks back on a study session, with all other cases known but not this one. */
export function reviewStudy(kase: Case, bench: Bench, answer: StudyAnswer): StudyReview {
  return withoutCase(bench, kase, () => {
    const { vocabulary, model } = bench;
    const roots = rootCauses(kase);
    const review = (asks: readonly string[]): ReviewedPath => {
      const { checks } = walkStudy(kase, asks, bench);
      return { checks, score: scorePath(checks) };
    };
    const walk = walkStudy(kase, answer.asked, bench);
    const named = [...answer.named].sort((a, b) => b.sure - a.sure);
    const last = walk.beliefs.at(-1);
    const possible = [...vocabulary.causes.values()]
      .filter(({ families }) => appliesTo(vocabulary, families, kase.instrument))
      .map(({ id }) => id);
    return {
      roots,
      verdict: verdictOn(named, roots),
      brier: brierScore(named, roots, possible),
      evidenceBrier: brierScore(last ? namesOf(last, model.causes) : [], roots, possible),
      own: { checks: walk.checks, score: scorePath(walk.checks) },
      recorded: review(recordedAsks(kase, vocabulary)),
      planned: review(plannedAsks(kase, bench)),
      lines: beliefLines(
        walk.beliefs,
        model.causes,
        roots,
        named.map(({ cause }) => cause),
      ),
      tooSoon: checksTooSoon(kase, walk, bench),
      enough: whenEnough(walk.beliefs, model.causes),
      repair: judgeRepair(kase, answer, vocabulary),
    };
  });
}

/** Named most surely counts as named first; of two named alike both must be right. */
function verdictOn(named: readonly NamedCause[], roots: readonly string[]): StudyReview["verdict"] {
  const surest = named.filter(({ sure }) => sure === named[0]?.sure);
  if (surest.length > 0 && surest.every(({ cause }) => roots.includes(cause))) return "right";
  return named.some(({ cause }) => roots.includes(cause)) ? "among them" : "missed";
}

const namesOf = ({ causes }: Posterior, ids: readonly string[]): NamedCause[] =>
  ids.map((cause, row) => ({ cause, sure: causes[row] ?? 0 }));
