import type { Case } from "../../casebook/caseFile";
import { type CauseRow, formOfFields, sumStepMinutes } from "../../casebook/form/caseForm";
import { formatPartRef, parsePartRef } from "../../casebook/partRef";
import { isCheckStep, isRepairStep } from "../../casebook/step";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { Answer } from "../answer";

/** A cause proposed for a case, and why: its chance, or that a repair did harm. */
export type ProposedCause = CauseRow & Readonly<{ probability: number | undefined }>;

/** What closing a job may propose from what is known of it. */
export type Closing = Readonly<{
  causes: readonly ProposedCause[];
  outcome: string;
  minutes: string;
  charge: string;
  swallowedMinutes: string;
  swallowedMoney: string;
}>;

/** From this chance on a cause that does not lead is proposed as having helped it along. Chosen. */
const helpedAlong = 0.2;

/**
 * Proposes how a job is written up: the likeliest cause as its root, those not far behind as having helped it along, a row to
 * be filled in for what a repair brought on, the minutes added up, and of the harms those that the shop pays for. What the
 * sheet says already is kept.
 *
 * @param hourCost what an hour at the bench costs the shop; without it no money is proposed as swallowed
 */
export function proposeClosing(
  kase: Case,
  { causes }: Pick<Answer, "causes">,
  vocabulary: Vocabulary,
  hourCost?: number,
): Closing {
  const results = kase.path.filter(isRepairStep).map(({ result }) => result);
  const said = kase.causes.map(
    ({ cause, part, role }, at): ProposedCause => ({
      from: String(at),
      cause,
      part: part ?? "",
      role,
      probability: causes.find(({ id }) => id === cause)?.probability,
    }),
  );
  const proposed = causes
    .filter(({ probability }, at) => at === 0 || probability >= helpedAlong)
    .map(
      ({ id, probability }, at): ProposedCause => ({
        from: "",
        cause: id,
        part: partOfCause(kase, vocabulary.causes.get(id)?.parts ?? [], vocabulary),
        role: at === 0 ? "root" : "contributing",
        probability,
      }),
    );
  const broughtOn: ProposedCause[] =
    kase.harms.length > 0 && !kase.causes.some(({ role }) => role === "brought-on")
      ? [{ from: "", cause: "", part: kase.harms[0]?.part ?? "", role: "", probability: undefined }]
      : [];
  const lost = kase.harms.reduce((sum, { minutes, paidBy }) => sum + (paidBy === "shop" ? minutes : 0), 0);
  const swallowed = kase.swallowed?.minutes ?? lost;
  return {
    causes: [...(said.length > 0 ? said : proposed), ...broughtOn],
    outcome:
      kase.outcome ?? (results.includes("fixed") ? "fixed" : results.includes("better") ? "improved" : ""),
    minutes: String(kase.minutes ?? sumStepMinutes(formOfFields(kase, ""))),
    charge: String(kase.charge ?? kase.quoted?.price ?? ""),
    swallowedMinutes: String(swallowed || ""),
    swallowedMoney: String(
      kase.swallowed?.money ??
        (hourCost && swallowed ? Math.round((100 * swallowed * hourCost) / 60) / 100 : ""),
    ),
  };
}

/** The part of a cause on this job: what the path last found trouble on, as the part that the cause sits in. */
function partOfCause({ path }: Case, parts: readonly string[], vocabulary: Vocabulary): string {
  const troubled = path
    .filter(isCheckStep)
    .filter(({ check, found }) => vocabulary.checks.get(check)?.normal !== found)
    .flatMap(({ part }) => (part === undefined ? [] : (parsePartRef(part) ?? [])))
    .filter(({ others }) => !others);
  const own = troubled.findLast(({ part }) => parts.includes(part));
  if (own) return formatPartRef(own);
  const place = troubled.findLast((ref) => ref.place !== undefined)?.place;
  const numbered = parts.find((id) => vocabulary.parts.get(id)?.numbered);
  return place !== undefined && numbered ? formatPartRef({ part: numbered, place, others: false }) : "";
}
