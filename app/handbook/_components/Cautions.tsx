import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";
import { lowerFirst } from "@/lib/text/lowerFirst";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Cautions.module.css";

type Props = Readonly<{ ids: readonly string[]; vocabulary: Vocabulary }>;

/** What can hurt a person in this work, what to do about it, and whose word goes first. */
export function Cautions({ ids, vocabulary }: Props) {
  const cautions = ids.flatMap((id) => vocabulary.cautions.get(id) ?? []);
  if (cautions.length === 0) return null;
  return (
    <Section title="Mind yourself">
      {cautions.map(({ id, label, hazard, guard, defersTo }) => (
        <article key={id} className={styles.caution}>
          <h3>
            <Link className={controls.title} href={`/handbook/cautions/${id}`} prefetch={false}>
              {label}
            </Link>
          </h3>
          <p>{hazard}</p>
          <p>{guard}</p>
          <p className="small soft">What these say comes first: {lowerFirst(defersTo)}.</p>
        </article>
      ))}
    </Section>
  );
}
