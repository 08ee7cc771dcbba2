import Link from "next/link";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import { againstHandbook } from "@/lib/consult/sheet/againstHandbook";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

type Props = Readonly<{ kase: Case; vocabulary: Vocabulary }>;

/** What was found in a case that the handbook says is rarely or never met with its root cause. */
export function AgainstNote({ kase, vocabulary }: Props) {
  const roots = kase.causes.filter(({ role }) => role === "root").map(({ cause }) => cause);
  const against = [...againstHandbook(kase, roots, vocabulary)].filter(([, list]) => list.length > 0);
  if (against.length === 0) return null;
  return (
    <Section title="Against the handbook">
      {against.map(([id, list]) => (
        <div key={id}>
          <p className="small soft">
            With{" "}
            <Link href={`/handbook/causes/${id}`} prefetch={false}>
              {labelOf(vocabulary.causes, id).toLowerCase()}
            </Link>{" "}
            the handbook would not look for:
          </p>
          <ul>
            {list.map(({ words, often }) => (
              <li key={words}>
                {words} ({often} met)
              </li>
            ))}
          </ul>
        </div>
      ))}
    </Section>
  );
}
