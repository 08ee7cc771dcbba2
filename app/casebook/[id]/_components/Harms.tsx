import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { labelOf } from "@/app/_components/labelOf";
import { partWords } from "@/app/_components/partWords";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import { upperFirst } from "@/lib/text/upperFirst";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Harms.module.css";

type Props = Readonly<{ harms: Case["harms"]; vocabulary: Vocabulary }>;

/** What a repair did that it should not have, and who paid for it. */
export function Harms({ harms, vocabulary }: Props) {
  if (harms.length === 0) return null;
  return (
    <Section title="Harm done">
      <ul>
        {harms.map(({ repair, part, what, how, step, minutes, paidBy }) => (
          <li key={`${repair} ${what}`} className={styles.harm}>
            <h3>
              <Link className={controls.title} href={`/handbook/repairs/${repair}`} prefetch={false}>
                {[labelOf(vocabulary.repairs, repair), partWords(vocabulary, part ?? null)]
                  .filter(Boolean)
                  .join(", ")}
              </Link>
            </h3>
            <p>{upperFirst(what)}.</p>
            {how || step ? (
              <p className="small">
                {[step ? `By step ${step} of the path` : "", how ?? ""].filter(Boolean).join(": ")}.
              </p>
            ) : null}
            <p className="small soft">
              {formatMinutes(minutes)} to make good,{" "}
              {paidBy === "shop" ? "paid by the shop" : "paid by the customer"}
            </p>
          </li>
        ))}
      </ul>
    </Section>
  );
}
