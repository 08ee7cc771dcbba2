import type { Case } from "../../casebook/caseFile";
import { parsePartRef } from "../../casebook/partRef";
import {
  type CheckStep,
  isBoreStep,
  isCheckStep,
  isPlugStep,
  isRepairStep,
  isSwapStep,
  type PlugStep,
  type RepairStep,
  type Step,
  type SwapStep,
} from "../../casebook/step";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { Finding } from "../finding";
import { readDiameters, readPlugs } from "../understand/readReadings";
import { readSwapTests, type SwapTest } from "../understand/readSwapTests";

/**
 * Takes a case's findings from its path: what was found before the first repair that fixed it. What came after shows the
 * mended instrument, not the trouble.
 */
export function caseFindings(kase: Pick<Case, "path">, vocabulary: Vocabulary): Finding[] {
  const cured = kase.path.findIndex((step) => isRepairStep(step) && step.result === "fixed");
  const before = cured < 0 ? kase.path : kase.path.slice(0, cured);
  const swaps = before.filter(isSwapStep).flatMap(swapTest);
  const findings = before.flatMap((step) => stepFindings(step, vocabulary));
  return [...findings, ...readSwapTests(swaps, findings, vocabulary).findings];
}

/** The findings of one step; swap tests tell nothing one by one and are read together in `caseFindings`. */
function stepFindings(step: Step, vocabulary: Vocabulary): Finding[] {
  if (isCheckStep(step)) {
    const part = step.part === undefined ? undefined : parsePartRef(step.part);
    return [{ check: step.check, outcome: step.found, part }, ...inStroke(step, vocabulary, part)];
  }
  if (isSwapStep(step)) return inStroke(step, vocabulary, parsePartRef(step.swap[1]));
  if (isPlugStep(step)) return plugFindings(step, vocabulary);
  if (isBoreStep(step)) {
    const part = parsePartRef(step.bore.part);
    return part ? [...readDiameters(part, step.bore.readings, vocabulary).findings] : [];
  }
  return isRepairStep(step) ? trialFindings(step, vocabulary) : [];
}

function inStroke(step: CheckStep | SwapStep, { checks }: Vocabulary, part: Finding["part"]): Finding[] {
  if (step.where === undefined && step.way === undefined) return [];
  return [...checks.values()].flatMap((check) => {
    const outcome = check.reads === "place" ? step.where : check.reads === "way" ? step.way : undefined;
    return outcome === undefined ? [] : [{ check: check.id, outcome, part }];
  });
}

function plugFindings({ plugs, reference, piston }: PlugStep, vocabulary: Vocabulary): Finding[] {
  const part = parsePartRef(plugs.part);
  if (!part) return [];
  const { passes, stops } = plugs;
  return [
    ...readPlugs(
      { part, passes, stops, ...(reference ? { reference } : {}), ...(piston ? { piston } : {}) },
      vocabulary,
    ).findings,
  ];
}

/** A repair that changed nothing, or helped, answers the checks that it is a trial of. */
function trialFindings({ repair, part, result }: RepairStep, { checks }: Vocabulary): Finding[] {
  return [...checks.values()].flatMap((check) => {
    if (!check.triedBy.includes(repair)) return [];
    const outcome = check.outcomes.find(({ measured }) => measured?.results?.includes(result));
    return outcome
      ? [{ check: check.id, outcome: outcome.id, part: part === undefined ? undefined : parsePartRef(part) }]
      : [];
  });
}

function swapTest({ swap: [a, b], found, where, way, turned }: SwapStep): SwapTest[] {
  const [guest, host] = [parsePartRef(a), parsePartRef(b)];
  const how = {
    ...(where === undefined ? {} : { where }),
    ...(way === undefined ? {} : { way }),
    ...(turned === undefined ? {} : { turned }),
  };
  return guest && host ? [{ a: guest, b: host, result: found, how }] : [];
}
