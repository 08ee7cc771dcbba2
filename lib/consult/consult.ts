import { uncertaintyBits } from "../diagnosis/informationGain";
import type { Posterior } from "../diagnosis/posterior";
import { estimateMinutes } from "../estimate/estimateMinutes";
import type { Answer } from "./answer";
import type { Bench } from "./bench/bench";
import { listCauses } from "./causes/listCauses";
import { opinionsOn } from "./causes/opinionsOn";
import { weighOpinions } from "./causes/weighOpinions";
import { listNextChecks } from "./checks/listNextChecks";
import { planAhead } from "./checks/planAhead";
import { keyFindings } from "./keyFindings";
import type { Problem } from "./problem";
import { listWarnings } from "./repairs/listWarnings";
import { findSimilarCases, jobInView, reallyLike, showSimilarCases, voters } from "./similarCases";
import { understandProblem } from "./understand/understandProblem";

export type ConsultOptions = Readonly<{
  /** A case to leave out as if it had never happened, for asking about itself. The model must not have learned it either. */
  without?: string;
  /** Whether to plan ahead, which takes longer than all the rest; default not. */
  plan?: boolean;
}>;

/** How many like cases are shown. Chosen. */
const shown = 8;
/**
 * Answers the one question asked of the engine: what is like it, what is it, what to check next, what not to do yet.
 * A pure function of bench and problem.
 *
 * @returns causes by falling probability (ties by id), which with `noneFits` add up to 1 before the list is cut; see `Answer`
 */
export function consult(
  problem: Problem,
  bench: Bench,
  { without, plan = false }: ConsultOptions = {},
): Answer {
  const understanding = understandProblem(problem, bench.reader);
  const { instrument, findings } = understanding;
  const known = instrument === undefined ? undefined : bench.vocabulary.instruments.get(instrument);
  const keyed = keyFindings(findings, bench.vocabulary);
  const retrieved = findSimilarCases(bench, problem, understanding, keyed, voters, without);
  const belief = weighOpinions(
    opinionsOn(bench, problem, understanding, keyed, retrieved),
    bench.vocabulary.weights,
    {
      isStrangeInstrument: problem.instrument !== undefined && instrument === undefined,
      isOutside: known?.outside === true,
      findingCount: findings.length,
    },
  );
  const causes = listCauses(bench, belief, keyed, retrieved);
  const similar = showSimilarCases(bench, reallyLike(retrieved).slice(0, shown));
  const estimate = estimateMinutes(
    retrieved
      .slice(0, shown + 4)
      .flatMap(({ case: kase, similarity }) =>
        kase.minutes === undefined ? [] : [{ minutes: kase.minutes, weight: similarity ** 4 }],
      ),
  );
  return {
    ...(problem.id === undefined ? {} : { id: problem.id }),
    instrument: known ? { id: known.id, label: known.label, outside: known.outside } : null,
    understood: findings.map(({ shown: finding }) => finding),
    notUnderstood: understanding.notUnderstood,
    causes,
    noneFits: belief.noneFits,
    similar,
    nextChecks: listNextChecks(bench, belief, keyed, instrument),
    ...(plan ? { plan: findings.length > 0 ? planAhead(bench, belief, keyed, instrument) : null } : {}),
    warnings: listWarnings(bench, causes, jobInView(instrument, retrieved)),
    estimate: estimate && findings.length > 0 ? { minutes: pick(estimate), cases: estimate.cases } : null,
    gauging: understanding.gauging,
    swap: understanding.swap,
    remarks: [...understanding.remarks, ...remarksOn(bench, belief, known, findings.length)],
  };
}

type Known = ReturnType<Bench["vocabulary"]["instruments"]["get"]>;

const pick = ({ p50, p80, p95 }: Readonly<{ p50: number; p80: number; p95: number }>) => ({
  p50: Math.round(p50),
  p80: Math.round(p80),
  p95: Math.round(p95),
});

const field = "It covers brass and woodwind instruments that a band repair shop mends.";

/** From here on "none of these" is said aloud. Chosen. */
const noneLikely = 0.4;
/** Share of the uncertainty that must be gone before the answer counts as more than a guess. Chosen. */
const telling = 0.15;

function remarksOn(bench: Bench, belief: Posterior, known: Known, found: number): string[] {
  if (known?.outside) {
    return [`${known.label} lies outside this handbook. ${field}`];
  }
  if (found === 0)
    return [`Nothing here bears on a cause yet: say what the instrument does, or tap it. ${field}`];
  const left = uncertaintyBits(belief) / Math.log2(belief.causes.length + 1);
  const remarks: string[] = [];
  if (belief.causes.every((p) => p === 0)) {
    remarks.push(`The handbook has no causes for this instrument yet${known ? ` (${known.label})` : ""}.`);
  } else if (belief.noneFits > noneLikely) {
    remarks.push(
      "No cause in the handbook explains this well: look for something else, or for a slip in what was said.",
    );
  }
  if (left > 1 - telling) remarks.push("Little is known yet: the causes lie close together.");
  if (bench.cases.size < 10) {
    remarks.push(
      `Only ${bench.cases.size} finished cases stand behind this: it rests on the handbook's words.`,
    );
  }
  return remarks;
}
