import type { Case } from "../../casebook/caseFile";
import { formatPartRef, parsePartRef } from "../../casebook/partRef";
import { type CheckStep, isCheckStep, isRepairStep } from "../../casebook/step";
import type { Vocabulary } from "../../vocabulary/vocabulary";

/** A check that a repair must stand before the job is closed as fixed. */
export type Proof = Readonly<{
  /** By which a form names it: `check outcome part`. */
  key: string;
  check: string;
  outcome: string;
  part: string | undefined;
  /** Labels of the repairs that ask for it. */
  repairs: readonly string[];
  /**
   * What the path says since those repairs: found as it should be, found otherwise, or not checked again; `planned` where the
   * repair that asks for it is not done yet.
   */
  standing: "proven" | "contradicted" | "open" | "planned";
}>;

/**
 * Lists what proves the repairs of a path and then of its plan, each proof once. A proof holds when its check was made after the last repair that
 * asks for it and found what it should; of several the last counts. A repair that changed nothing needs no proof.
 *
 * @returns in the order of the repairs
 */
export function listProofs(
  { path, plan = [] }: Pick<Case, "path" | "plan">,
  vocabulary: Vocabulary,
): Proof[] {
  const proofs = new Map<string, Proof>();
  for (const [at, step] of path.entries()) {
    if (!isRepairStep(step) || step.result === "no-change") continue;
    const repair = vocabulary.repairs.get(step.repair);
    for (const { check, outcome } of repair?.proof ?? []) {
      const part = partOfProof(step, check, vocabulary);
      const key = [check, outcome, ...(part ? [part] : [])].join(" ");
      const later = path
        .slice(at + 1)
        .filter(isCheckStep)
        .filter((one) => one.check === check && isOnSame(one, part))
        .at(-1);
      const standing = later === undefined ? "open" : later.found === outcome ? "proven" : "contradicted";
      const labels = new Set([...(proofs.get(key)?.repairs ?? []), repair?.label ?? step.repair]);
      proofs.set(key, { key, check, outcome, part, repairs: [...labels], standing });
    }
  }
  const done = new Set(path.filter(isRepairStep).map(({ repair }) => repair));
  for (const planned of plan) {
    const repair = vocabulary.repairs.get(planned.repair);
    if (!repair || done.has(repair.id)) continue;
    for (const { check, outcome } of repair.proof) {
      const part = partOfProof(planned, check, vocabulary);
      const key = [check, outcome, ...(part ? [part] : [])].join(" ");
      const known = proofs.get(key);
      const repairs = [...new Set([...(known?.repairs ?? []), repair.label])];
      proofs.set(key, { key, check, outcome, part, repairs, standing: known?.standing ?? "planned" });
    }
  }
  return [...proofs.values()];
}

/** The part on which a repair is proven: its own where the check looks at such a part, else the check's with its number. */
function partOfProof(
  { part }: Readonly<{ part?: string | undefined }>,
  checkId: string,
  { checks, parts }: Vocabulary,
): string | undefined {
  const ref = part === undefined ? undefined : parsePartRef(part);
  const check = checks.get(checkId);
  if (!ref || !check) return undefined;
  if (check.parts.includes(ref.part)) return part;
  const numbered = check.parts.find((id) => parts.get(id)?.numbered);
  if (ref.place === undefined || numbered === undefined || ref.others) return undefined;
  return formatPartRef({ part: numbered, place: ref.place, others: false });
}

/** Whether a check was made on the part to be proven: on no part said, on all of them, or on the one of the same number. */
function isOnSame({ part }: CheckStep, proven: string | undefined): boolean {
  if (part === undefined || proven === undefined) return true;
  const [there, here] = [parsePartRef(part), parsePartRef(proven)];
  if (!there || !here || there.others !== here.others) return false;
  return there.place === undefined || here.place === undefined || there.place === here.place;
}
