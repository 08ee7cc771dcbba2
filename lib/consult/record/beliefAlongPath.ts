import type { Case } from "../../casebook/caseFile";
import { weighCauses } from "../../diagnosis/posterior";
import { appliesTo } from "../../vocabulary/appliesTo";
import type { Bench } from "../bench/bench";
import { keyFindings } from "../keyFindings";
import { caseFindings } from "./caseFindings";

/** How belief in the leading causes moved as a case's path was walked. */
export type PathBelief = Readonly<{
  /** The case's root cause first where it has one that the model knows, then the causes most believed in at any time. */
  causes: readonly string[];
  /** Probabilities before the first step, 0..1, in the order of `causes`. */
  before: readonly number[];
  /** Probabilities after each step, one row a step of the path, in the order of `causes`. */
  after: readonly (readonly number[])[];
  /** The step (from 0) after which the root cause leads all others for good, having not led before; null where there is none. */
  turn: number | null;
}>;

/** The root and two others: three lines are told apart at a glance, more are not. */
const shown = 3;

/**
 * Follows belief along a case's path: after each step P(cause | what had been found by then), as `weighCauses` has it.
 * Swap tests are read together with those before them; what comes after the cure changes nothing (see `caseFindings`).
 *
 * @returns one row of probabilities a step; a path without steps has only `before`; ties between causes go by id
 */
export function beliefAlongPath(
  kase: Pick<Case, "instrument" | "path" | "causes">,
  { vocabulary, model }: Pick<Bench, "vocabulary" | "model">,
): PathBelief {
  const possible = (id: string) =>
    appliesTo(vocabulary, vocabulary.causes.get(id)?.families ?? [], kase.instrument);
  const beliefAfter = (steps: number) => {
    const findings = caseFindings({ path: kase.path.slice(0, steps) }, vocabulary);
    const outcomes = [...keyFindings(findings, vocabulary)].map(
      ([key, { outcome }]) => [key, outcome] as const,
    );
    return weighCauses(model, new Map(outcomes), { possible }).causes;
  };
  const beliefs = [0, ...kase.path.map((_, step) => step + 1)].map(beliefAfter);
  const rootId = kase.causes.find(({ role }) => role === "root")?.cause;
  const root = rootId === undefined ? -1 : model.causes.indexOf(rootId);
  const rows = chooseRows(model.causes, beliefs, root);
  const [before = [], ...after] = beliefs.map((belief) => rows.map((row) => belief[row] ?? 0));
  return {
    causes: rows.flatMap((row) => model.causes[row] ?? []),
    before,
    after,
    turn: root < 0 ? null : findTurn(beliefs, root),
  };
}

function chooseRows(ids: readonly string[], beliefs: readonly Float64Array[], root: number): number[] {
  const most = ids.map((_, row) => Math.max(...beliefs.map((belief) => belief[row] ?? 0)));
  const others = ids
    .map((id, row) => ({ id, row, belief: most[row] ?? 0 }))
    .filter(({ row, belief }) => row !== root && belief > 0)
    .sort((a, b) => b.belief - a.belief || (a.id < b.id ? -1 : 1))
    .map(({ row }) => row);
  return (root < 0 ? others : [root, ...others]).slice(0, shown);
}

function findTurn(beliefs: readonly Float64Array[], root: number): number | null {
  const leads = beliefs.map((belief) =>
    belief.every((probability, row) => row === root || probability < (belief[root] ?? 0)),
  );
  const lastBehind = leads.lastIndexOf(false);
  // Entry 0 stands before the first step, so the entry after the last one behind is the step of the same number.
  return lastBehind < 0 || lastBehind === leads.length - 1 ? null : lastBehind;
}
