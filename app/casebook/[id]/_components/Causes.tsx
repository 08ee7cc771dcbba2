import Link from "next/link";
import { labelOf } from "@/app/_components/labelOf";
import { partWords } from "@/app/_components/partWords";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Causes.module.css";

const roles = [
  { role: "root", words: "Root" },
  { role: "contributing", words: "Helped it along" },
  { role: "brought-on", words: "Our repair brought on" },
] as const;

type Props = Readonly<{ kase: Case; vocabulary: Vocabulary }>;

/** Why it did not work, cause by cause with its role; and what it had first been taken for. */
export function Causes({ kase, vocabulary }: Props) {
  const firstThought = kase.firstThought;
  const isMisled = firstThought !== undefined && !kase.causes.some(({ cause }) => cause === firstThought);
  return (
    <Section title="Causes">
      <dl className={styles.roles}>
        {roles.flatMap(({ role, words }) =>
          kase.causes
            .filter((cause) => cause.role === role)
            .map(({ cause, part, note }) => (
              <div key={`${role} ${cause} ${part}`} data-role={role}>
                <dt>{words}</dt>
                <dd>
                  <Link href={`/handbook/causes/${cause}`} prefetch={false}>
                    {[labelOf(vocabulary.causes, cause), partWords(vocabulary, part ?? null)]
                      .filter(Boolean)
                      .join(", ")}
                  </Link>
                  {note ? <p>{note}</p> : null}
                </dd>
              </div>
            )),
        )}
        {firstThought ? (
          <div>
            <dt>First taken for</dt>
            <dd>
              {labelOf(vocabulary.causes, firstThought)}
              {isMisled ? null : <p>and so it was</p>}
            </dd>
          </div>
        ) : null}
      </dl>
      {kase.causes.length === 0 ? (
        <p className="small soft">{kase.status === "open" ? "Not known yet." : "None was found."}</p>
      ) : null}
    </Section>
  );
}
