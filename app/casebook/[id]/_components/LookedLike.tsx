import { CaseLine } from "@/app/_components/CaseLine";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";

type Props = Readonly<{ like: Case["like"]; cases: ReadonlyMap<string, Case> }>;

const lessonWords = { held: "its lesson held here", failed: "its lesson did not hold here" } as const;

/** The past cases that this one looked like when it was closed: what was different, and whether their lessons held. */
export function LookedLike({ like = [], cases }: Props) {
  if (like.length === 0) return null;
  return (
    <Section title="It looked like these">
      {like.map(({ case: id, different, lesson }) => (
        <CaseLine
          key={id}
          id={id}
          title={cases.get(id)?.title ?? `Case ${id}`}
          meta={lesson ? lessonWords[lesson] : undefined}
          facts={different ? [{ term: "differs", words: different }] : []}
          lesson={lesson ? cases.get(id)?.lessons[0] : undefined}
        />
      ))}
    </Section>
  );
}
