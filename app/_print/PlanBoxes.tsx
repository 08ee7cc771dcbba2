import { labelOf } from "@/app/_components/labelOf";
import { partWords } from "@/app/_components/partWords";
import { riskWord } from "@/app/_components/riskWord";
import type { Case } from "@/lib/casebook/caseFile";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Print.module.css";

type Props = Readonly<{ plan: NonNullable<Case["plan"]>; vocabulary: Vocabulary }>;

/** The chosen repairs, each with the boxes of what goes before it. */
export function PlanBoxes({ plan, vocabulary }: Props) {
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
                  <li key={check} data-ticked={ticked.includes(check) ? "" : undefined}>
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
