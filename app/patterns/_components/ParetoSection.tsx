import Link from "next/link";
import { chanceIn100 } from "@/app/_components/chanceIn100";
import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";
import { facetWords } from "@/app/casebook/_components/facetWords";
import type { Case } from "@/lib/casebook/caseFile";
import { commonestRoots } from "@/lib/patterns/commonestRoots";
import { type ParetoRow, paretoRows } from "@/lib/patterns/paretoRows";
import type { FacetCounts } from "@/lib/text/narrowCases";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { FigureTable } from "./FigureTable";
import { PlotFigure } from "./PlotFigure";
import { paretoPlot } from "./paretoPlot";
import {
  byNames,
  type CountedBy,
  casesHref,
  countedBy,
  type PatternsQuery,
  patternsHref,
} from "./patternsQuery";

type Props = Readonly<{
  query: PatternsQuery;
  cases: readonly Case[];
  counts: FacetCounts;
  vocabulary: Vocabulary;
}>;

/** As many bars as are compared at a glance; the table has them all. */
const mostBars = 15;
/** Rows over this are left to the casebook. */
const mostRows = 200;
const mostRoots = 3;
/** Juran's rule of thumb: the few that make four fifths. */
const mostPart = 0.8;

const names: Readonly<Record<CountedBy, Readonly<{ choice: string; one: string; many: string }>>> = {
  cause: { choice: "Root cause", one: "root cause", many: "root causes" },
  kind: { choice: "Kind of trouble", one: "kind of trouble", many: "kinds of trouble" },
  part: { choice: "Part at fault", one: "part", many: "parts" },
  family: { choice: "Family", one: "family", many: "families" },
  maker: { choice: "Maker", one: "maker", many: "makers" },
};

/** What brings instruments in: the commonest first, with the running share of all. */
export function ParetoSection({ query, cases, counts, vocabulary }: Props) {
  const facet = countedBy[query.by];
  const rows = paretoRows(counts[facet]);
  const labelOf = (value: string) => facetWords(vocabulary, facet, value);
  const hrefOf = (value: string) => casesHref(query, { [facet]: value });
  const bars = rows
    .slice(0, mostBars)
    .map((row) => ({ ...row, label: labelOf(row.value), href: hrefOf(row.value) }));
  const { one, many } = names[query.by];
  return (
    <Section title="What brings instruments in" id="causes" aside={sayFew(rows, one, many)}>
      <nav aria-label="Count by" className="unprinted">
        <p className={controls.row}>
          {byNames.map((by) => (
            <Link
              key={by}
              className={controls.plain}
              href={`${patternsHref({ ...query, by })}#causes`}
              aria-current={by === query.by ? "true" : undefined}
              prefetch={false}
              scroll={false}
            >
              {names[by].choice}
            </Link>
          ))}
        </p>
      </nav>
      {bars.length === 0 ? (
        <p className="small soft">None of these jobs names one.</p>
      ) : (
        <PlotFigure
          caption={
            <>
              Jobs by {one}
              {rows.length > mostBars ? `, the ${mostBars} commonest of ${rows.length}` : ""}. The line beside
              the bars is the running share of all, in 100. A row opens its cases.{" "}
              {query.by === "maker" || query.by === "family"
                ? "Counts tell what comes in, not how well it is made."
                : "A job with two counts under both."}
            </>
          }
          draw={(width) => paretoPlot(bars, width)}
          tableTitle={`All ${rows.length === 1 ? "" : `${rows.length} `}in figures`}
        >
          <FigureTable
            label={`Jobs by ${one}`}
            head={[
              names[query.by].choice,
              "Jobs",
              "Running share, in 100",
              query.by === "cause" ? "Handbook" : "Mostly for",
            ]}
            words={[3]}
            rows={tableRows()}
          />
        </PlotFigure>
      )}
    </Section>
  );

  function tableRows() {
    const roots =
      query.by === "cause" ? undefined : commonestRoots(cases, facet, { vocabulary, most: mostRoots });
    return rows.slice(0, mostRows).map(({ value, count, running }) => ({
      key: value,
      cells: [
        <a key="cases" href={hrefOf(value)}>
          {labelOf(value)}
        </a>,
        count,
        chanceIn100(running),
        roots ? (
          <Roots
            key="roots"
            roots={roots.get(value) ?? []}
            nameOf={(root) => facetWords(vocabulary, "root", root)}
            hrefOf={(root) => casesHref(query, { [facet]: value, root })}
          />
        ) : (
          <a
            key="handbook"
            href={`/handbook/causes/${value}`}
            aria-label={`${labelOf(value)} in the handbook`}
          >
            in the handbook
          </a>
        ),
      ],
    }));
  }
}

type RootsProps = Readonly<{
  roots: readonly ParetoRow[];
  nameOf: (root: string) => string;
  hrefOf: (root: string) => string;
}>;

function Roots({ roots, nameOf, hrefOf }: RootsProps) {
  return roots.map(({ value, count }, at) => (
    <span key={value}>
      <a href={hrefOf(value)}>
        {nameOf(value)} ({count})
      </a>
      {at < roots.length - 1 ? ", " : ""}
    </span>
  ));
}

/** How few of the values make four fifths of all: "27 of 159 root causes make 80 in 100". */
function sayFew(rows: readonly ParetoRow[], one: string, many: string): string {
  if (rows.length === 0) return "";
  const few = rows.findIndex(({ running }) => running >= mostPart) + 1;
  const words = rows.length === 1 ? one : many;
  return `${few} of ${rows.length} ${words} make${few === 1 ? "s" : ""} ${100 * mostPart} in 100 of all`;
}
