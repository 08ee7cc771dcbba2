import { labelOf } from "@/app/_components/labelOf";
import { partWords } from "@/app/_components/partWords";
import { riskWord } from "@/app/_components/riskWord";
import type { Case } from "@/lib/casebook/caseFile";
import { isCheckStep } from "@/lib/casebook/step";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Print.module.css";

type Props = Readonly<{ kase: Case; vocabulary: Vocabulary }>;

/** The chosen repairs, each with the boxes of what goes before it; what the path shows is ticked. */
export function PlanBoxes({ kase: { plan = [], path }, vocabulary }: Props) {
  const made = new Set(path.filter(isCheckStep).map(({ check }) => check));
  const { checks, repairs } = vocabulary;
  if (plan.length === 0) return null;
  return (
    <>
      <h2>Plan</h2>
      <ul>
        {plan.map(({ repair, part, ticked = [], seen }, at) => {
          const entry = repairs.get(repair);
          return (
            <li key={`${at} ${repair}`}>
              <b>
                {[entry?.label ?? repair, partWords(vocabulary, part ?? null)].filter(Boolean).join(", ")}
              </b>{" "}
              ({entry ? riskWord(entry.risk).toLowerCase() : ""}
              {seen ? "" : "; what goes before it was not looked at yet"})
              <ul className={styles.boxes}>
                {(entry?.checkFirst ?? []).map(({ check, why }) => (
                  <li key={check} data-ticked={ticked.includes(check) || made.has(check) ? "" : undefined}>
                    {labelOf(checks, check)}: {why}
                  </li>
                ))}
              </ul>
            </li>
          );
        })}
      </ul>
    </>
  );
}
