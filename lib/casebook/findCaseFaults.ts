import { nearestWord } from "../document/nearestWord";
import { placesOf } from "../vocabulary/placesOf";
import type { Vocabulary } from "../vocabulary/vocabulary";
import type { CaseFields } from "./caseFile";
import { parsePartRef } from "./partRef";
import { isBoreStep, isCheckStep, isPlugStep, isRepairStep, isSwapStep, kindsOfStep } from "./step";

/** A field of a case that names something which the vocabulary does not know, or says what cannot be. */
export type CaseFault = Readonly<{ path: readonly PropertyKey[]; expected: string; received: string }>;

/**
 * Holds a case against the vocabulary: every id must resolve, every part number must exist on the instrument, and a step
 * must be of one kind.
 *
 * @returns all faults, in the order of the fields; an empty list when the case is sound
 */
export function findCaseFaults(fields: CaseFields, vocabulary: Vocabulary): CaseFault[] {
  const faults: CaseFault[] = [];
  const { instruments, parts, checks, causes, repairs } = vocabulary;
  const turns = new Map(Object.entries(vocabulary.words.swapTurns));

  const known = (
    path: readonly PropertyKey[],
    id: string | undefined,
    map: ReadonlyMap<string, unknown>,
    what: string,
  ) => {
    if (id === undefined || map.has(id)) return;
    const meant = nearestWord(id, map.keys());
    faults.push({
      path,
      expected: meant ? `'${meant}', or another known ${what}` : `the id of a known ${what}`,
      received: `'${id}'`,
    });
  };
  const part = (path: readonly PropertyKey[], text: string | undefined) => {
    const ref = text === undefined ? undefined : parsePartRef(text);
    if (!ref) return;
    known(path, ref.part, parts, "part");
    if (ref.place === undefined || !parts.has(ref.part)) return;
    const places = placesOf(vocabulary, fields.instrument, ref.part);
    if (places !== undefined && ref.place > places) {
      faults.push({
        path,
        expected: `a number from 1 to ${places} on this instrument`,
        received: `'${text}'`,
      });
    }
  };
  const outcome = (path: readonly PropertyKey[], checkId: string, id: string) => {
    const check = checks.get(checkId);
    if (check) known(path, id, new Map(check.outcomes.map((o) => [o.id, o])), `outcome of ${checkId}`);
  };
  const reading = (reads: "place" | "way", path: readonly PropertyKey[], id: string | undefined) => {
    if (id === undefined) return;
    const check = [...checks.values()].find((candidate) => candidate.reads === reads);
    if (check) outcome(path, check.id, id);
  };

  known(["instrument"], fields.instrument, instruments, "instrument");
  known(["firstThought"], fields.firstThought, causes, "cause");
  for (const [index, planned] of (fields.plan ?? []).entries()) {
    const at = (...rest: PropertyKey[]) => ["plan", index, ...rest];
    known(at("repair"), planned.repair, repairs, "repair");
    known(at("for"), planned.for, causes, "cause");
    part(at("part"), planned.part);
    for (const name of ["seen", "ticked"] as const)
      for (const [place, check] of (planned[name] ?? []).entries())
        known(at(name, place), check, checks, "check");
  }
  for (const [index, step] of fields.path.entries()) {
    const at = (...rest: PropertyKey[]) => ["path", index, ...rest];
    const [first, second] = kindsOfStep(step);
    if (second !== undefined) {
      faults.push({
        path: at(second),
        expected: "a step of its own for it",
        received: `${second} beside ${first}`,
      });
    }
    if (isCheckStep(step)) {
      known(at("check"), step.check, checks, "check");
      outcome(at("found"), step.check, step.found);
    }
    if (isCheckStep(step) || isSwapStep(step)) {
      reading("place", at("where"), step.where);
      reading("way", at("way"), step.way);
    }
    if (isCheckStep(step) || isRepairStep(step)) part(at("part"), step.part);
    if (isRepairStep(step)) known(at("repair"), step.repair, repairs, "repair");
    if (isSwapStep(step)) {
      for (const [side, text] of step.swap.entries()) part(at("swap", side), text);
      known(at("turned"), step.turned, turns, "turn of swapTurns");
    }
    if (isPlugStep(step)) {
      part(at("plugs", "part"), step.plugs.part);
      part(at("reference", "part"), step.reference?.part);
      part(at("piston", "part"), step.piston?.part);
    }
    if (isBoreStep(step)) part(at("bore", "part"), step.bore.part);
  }
  for (const [index, cause] of fields.causes.entries()) {
    known(["causes", index, "cause"], cause.cause, causes, "cause");
    part(["causes", index, "part"], cause.part);
  }
  for (const [index, harm] of fields.harms.entries()) {
    known(["harms", index, "repair"], harm.repair, repairs, "repair");
    part(["harms", index, "part"], harm.part);
    if (harm.step !== undefined && harm.step > fields.path.length) {
      faults.push({
        path: ["harms", index, "step"],
        expected: `the number of a step, from 1 to ${fields.path.length}`,
        received: String(harm.step),
      });
    }
  }
  return faults;
}
