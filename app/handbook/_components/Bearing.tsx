import Link from "next/link";
import { CaseLine } from "@/app/_components/CaseLine";
import controls from "@/app/_components/controls.module.css";
import { formatDay } from "@/app/_components/formatDay";
import { labelOf } from "@/app/_components/labelOf";
import { More } from "@/app/_components/More";
import { Section } from "@/app/_components/Section";
import { casebookHref } from "@/app/casebook/_components/casebookQuery";
import type { Case } from "@/lib/casebook/caseFile";
import type { FacetChoice } from "@/lib/text/facets";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

type Props = Readonly<{
  title: string;
  /** The newest first. */
  cases: readonly Case[];
  /** What the casebook is narrowed to where all of them are to be seen. */
  all: FacetChoice;
  vocabulary: Vocabulary;
  /** What to say of each case beside instrument and day. */
  say?: (kase: Case) => string;
  none: string;
}>;

const shownFirst = 6;
/** More are for the casebook, where they can be searched. */
const mostShown = 24;

/** The newest of the cases that bear on an entry, each with its lesson, and the way to all of them. */
export function Bearing({ title, cases, all, vocabulary, say, none }: Props) {
  const lines = (some: readonly Case[]) =>
    some.map((kase) => (
      <CaseLine
        key={kase.id}
        id={kase.id}
        title={kase.title}
        meta={[labelOf(vocabulary.instruments, kase.instrument), formatDay(kase.received), say?.(kase)]
          .filter(Boolean)
          .join(" · ")}
        lesson={kase.lessons[0]}
      />
    ));
  const rest = cases.slice(shownFirst, mostShown);
  return (
    <Section title={title} aside={cases.length > 0 ? `${cases.length}` : undefined}>
      {cases.length === 0 ? <p className="small soft">{none}</p> : null}
      {lines(cases.slice(0, shownFirst))}
      <More count={rest.length} of="case">
        {lines(rest)}
      </More>
      {rest.length > 0 ? (
        <p>
          <Link className={controls.opens} href={casebookHref({ words: "", choice: all })} prefetch={false}>
            All {cases.length} in the casebook
          </Link>
        </p>
      ) : null}
    </Section>
  );
}
