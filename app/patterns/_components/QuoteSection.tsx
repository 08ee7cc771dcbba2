import type { ReactNode } from "react";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import { quoteLimits } from "@/lib/casebook/quoteStanding";
import type { Patterns } from "@/lib/patterns/countPatterns";
import type { QuoteRecord } from "@/lib/patterns/quoteRecord";
import { listFamilies } from "@/lib/vocabulary/listFamilies";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { FigureTable } from "./FigureTable";
import { PlotFigure } from "./PlotFigure";
import { casesHref, type PatternsQuery } from "./patternsQuery";
import { QuoteLegend } from "./QuoteLegend";
import { quotePlot } from "./quotePlot";

type Props = Readonly<{
  query: PatternsQuery;
  patterns: Pick<Patterns, "quotes" | "quotesByFamily">;
  vocabulary: Vocabulary;
}>;

const times = (limit: number) => `${Math.round(100 * limit)} in 100`;
const money = (amount: number) => amount.toLocaleString("en-GB", { maximumFractionDigits: 0 });
/** `6,010 min` is no time that one sees before one: whole hours from ten on. */
const hours = (minutes: number) => (minutes < 600 ? formatMinutes(minutes) : `${money(minutes / 60)} h`);

/** Whether quotes hold: minutes and money against what was quoted, family by family. */
export function QuoteSection({ query, patterns: { quotes: all, quotesByFamily }, vocabulary }: Props) {
  const rows = listFamilies(vocabulary).flatMap(({ id }) => {
    const record = quotesByFamily.get(id);
    const href = (quote: string) => casesHref(query, { family: id, quote });
    const hrefs = {
      under: href("under"),
      held: href("held"),
      over: href("over"),
      "far-over": href("far-over"),
    };
    return !record || record.jobs === 0
      ? []
      : [{ ...record, family: id, label: labelOf(vocabulary.instruments, id), hrefs }];
  });
  const timed = rows.filter((row) => row.timed > 0);
  const late = all.standings.over + all.standings["far-over"];
  return (
    <Section
      title="Minutes and money against the quote"
      id="quotes"
      aside={`${all.timed} of ${all.jobs} finished jobs have minutes and a quote, ${all.priced} a charge and a quote`}
    >
      {timed.length === 0 ? (
        <p className="small soft">No finished job here has both minutes and a quote.</p>
      ) : (
        <>
          <p>
            <b>
              {late} of {all.timed} ran over.
            </b>{" "}
            Quoted {hours(all.quotedMinutes)}, took {hours(all.tookMinutes)}.{" "}
            {all.priced > 0 ? `Quoted ${money(all.quotedPrice)}, charged ${money(all.charged)}. ` : ""}
            {all.swallowing > 0
              ? `The shop swallowed ${hours(all.swallowedMinutes)} and ${money(all.swallowedMoney)} in ${all.swallowing} ${all.swallowing === 1 ? "job" : "jobs"}.`
              : ""}
          </p>
          <PlotFigure
            caption={
              <>
                Of each family&apos;s jobs, in 100: left of the middle the quote held, right of it the job ran
                over. Held is up to {times(quoteLimits.held)} of the quoted minutes, well under up to{" "}
                {times(quoteLimits.under)}, far over more than {times(quoteLimits.over)}. The figure in a
                piece is its jobs; a piece opens them.
                <QuoteLegend />
              </>
            }
            draw={(width) => quotePlot(timed, width)}
            tableTitle="Minutes and money in figures"
          >
            <QuoteTable
              rows={[
                ...rows.map((row) => ({
                  ...row,
                  name: <a href={casesHref(query, { family: row.family })}>{row.label}</a>,
                })),
                { ...all, family: "all", name: "All" },
              ]}
            />
          </PlotFigure>
        </>
      )}
    </Section>
  );
}

type TableRow = QuoteRecord & Readonly<{ family: string; name: ReactNode }>;

function QuoteTable({ rows }: Readonly<{ rows: readonly TableRow[] }>) {
  return (
    <FigureTable
      label="Minutes and money against the quote, by family"
      head={[
        "Family",
        "Jobs",
        "Well under",
        "Held",
        "Over",
        "Far over",
        "Quoted time",
        "Time taken",
        "With a charge",
        "Quoted",
        "Charged",
        "Swallowed in",
        "Time swallowed",
        "Money swallowed",
      ]}
      rows={rows.map((row) => ({
        key: row.family,
        cells: [
          row.name,
          row.jobs,
          row.standings.under,
          row.standings.held,
          row.standings.over,
          row.standings["far-over"],
          row.timed > 0 ? hours(row.quotedMinutes) : "",
          row.timed > 0 ? hours(row.tookMinutes) : "",
          row.priced,
          row.priced > 0 ? money(row.quotedPrice) : "",
          row.priced > 0 ? money(row.charged) : "",
          row.swallowing,
          row.swallowing > 0 ? hours(row.swallowedMinutes) : "",
          row.swallowing > 0 ? money(row.swallowedMoney) : "",
        ],
      }))}
    />
  );
}
