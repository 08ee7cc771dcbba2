import { formatMinutes } from "@/app/_components/formatMinutes";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import type { HarmRate } from "@/lib/patterns/harmRates";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { FigureTable } from "./FigureTable";
import { harmPlot } from "./harmPlot";
import { PlotFigure } from "./PlotFigure";
import { casesHref, type PatternsQuery } from "./patternsQuery";

type Props = Readonly<{ query: PatternsQuery; rates: readonly HarmRate[]; vocabulary: Vocabulary }>;

/** As many as are compared at a glance; the table has them all. */
const mostRows = 15;

/** Which repairs did harm, how often, and how little or much that says. */
export function HarmSection({ query, rates, vocabulary }: Props) {
  const rows = rates.map((rate) => ({
    ...rate,
    label: labelOf(vocabulary.repairs, rate.repair),
    href: casesHref(query, { harm: rate.repair }),
  }));
  const between = ({ low, high }: (typeof rows)[number]) =>
    `${Math.round(100 * low)} to ${Math.round(100 * high)}`;
  return (
    <Section
      title="Repairs that did harm"
      id="harms"
      aside={rows.length > 0 ? `${rows.length} of those done; the surest harm first` : undefined}
    >
      {rows.length === 0 ? (
        <p className="small soft">No finished job here tells of harm by a repair.</p>
      ) : (
        <PlotFigure
          caption={
            <>
              In how many of 100 jobs the repair does harm. The point is what was seen; between the jaws lies
              the true rate, 19 times in 20. Wide jaws: too few jobs to tell. A row opens the jobs in which it
              did harm.
            </>
          }
          draw={(width) => harmPlot(rows.slice(0, mostRows), width)}
          tableTitle="Harm in figures"
        >
          <FigureTable
            label="Harm by repair"
            head={["Repair", "Done in", "Harm in", "Between, in 100", "Time it cost", "Handbook"]}
            words={[5]}
            rows={rows.map((row) => ({
              key: row.repair,
              cells: [
                <a key="cases" href={row.href}>
                  {row.label}
                </a>,
                row.done,
                row.harmed,
                between(row),
                row.minutes > 0 ? formatMinutes(row.minutes) : "",
                <a
                  key="handbook"
                  href={`/handbook/repairs/${row.repair}`}
                  aria-label={`${row.label} in the handbook`}
                >
                  in the handbook
                </a>,
              ],
            }))}
          />
        </PlotFigure>
      )}
    </Section>
  );
}
