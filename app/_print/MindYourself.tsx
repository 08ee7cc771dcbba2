import type { Case } from "@/lib/casebook/caseFile";
import { isCheckStep, isRepairStep } from "@/lib/casebook/step";
import { lowerFirst } from "@/lib/text/lowerFirst";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Print.module.css";

type Props = Readonly<{ kase: Case; vocabulary: Vocabulary }>;

/** What can hurt whoever does this job: the cautions of all that is planned, mended or checked, in full. */
export function MindYourself({ kase, vocabulary: { checks, repairs, cautions } }: Props) {
  const inHand = [
    ...(kase.plan ?? []).map(({ repair }) => repair),
    ...kase.path.filter(isRepairStep).map(({ repair }) => repair),
  ];
  const asked = [
    ...inHand.flatMap((id) => repairs.get(id)?.cautions ?? []),
    ...kase.path.filter(isCheckStep).flatMap(({ check }) => checks.get(check)?.cautions ?? []),
  ];
  const mind = [...new Set(asked)].flatMap((id) => cautions.get(id) ?? []);
  if (mind.length === 0) return null;
  return (
    <section className={styles.mind}>
      <h2>Mind yourself</h2>
      {mind.map(({ id, label, hazard, guard, defersTo }) => (
        <p key={id}>
          <b>{label}.</b> {hazard} {guard} <i>What these say comes first: {lowerFirst(defersTo)}.</i>
        </p>
      ))}
    </section>
  );
}
