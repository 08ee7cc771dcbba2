import { labelOf } from "@/app/_components/labelOf";
import { partWords } from "@/app/_components/partWords";
import { riskWord } from "@/app/_components/riskWord";
import type { Case } from "@/lib/casebook/caseFile";
import { checkedFirst } from "@/lib/consult/sheet/checkedFirst";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Print.module.css";

type Props = Readonly<{ kase: Case; vocabulary: Vocabulary }>;

/** The chosen repairs, each with the boxes of what goes before it; what was made before it is ticked. */
export function PlanBoxes({ kase, vocabulary }: Props) {
  const { checks, repairs } = vocabulary;
  const { plan = [] } = kase;
  if (plan.length === 0) return null;
  return (
    <>
      <h2>Plan</h2>
      <ul className={styles.list}>
        {plan.map((planned, at) => {
          const { repair, part, seen } = planned;
          const made = checkedFirst(kase, planned);
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
                  <li key={check} data-ticked={made.has(check) ? "" : undefined}>
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
