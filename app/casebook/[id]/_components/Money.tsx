import { formatMinutes } from "@/app/_components/formatMinutes";
import { formatMoney } from "@/app/_components/formatMoney";
import { Jaws } from "@/app/_components/Jaws";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import styles from "./Money.module.css";

type Row = Readonly<{
  term: string;
  minutes?: number | undefined;
  promised?: number | undefined;
  money?: number | undefined;
  isLoss?: boolean;
}>;

/** What was promised, what it took, what was paid, and what the shop swallowed. */
export function Money({ kase }: Readonly<{ kase: Case }>) {
  const { quoted, minutes, charge, swallowed } = kase;
  const rows: readonly Row[] = [
    { term: "Quoted", minutes: quoted?.minutes, money: quoted?.price },
    { term: "Took", minutes, promised: quoted?.minutes },
    { term: "Charged", money: charge },
    { term: "Shop swallowed", minutes: swallowed?.minutes, money: swallowed?.money, isLoss: true },
  ];
  const told = rows.filter(({ minutes: some, money }) => some !== undefined || money !== undefined);
  const scale = 1.1 * Math.max(1, quoted?.minutes ?? 0, minutes ?? 0);
  const over = minutes !== undefined && quoted ? minutes - quoted.minutes : 0;
  return (
    <Section title="Minutes and money" aside={over > 0 ? `${formatMinutes(over)} over the quote` : undefined}>
      {told.length === 0 ? <p className="small soft">Nothing was written down.</p> : null}
      <dl className={styles.rows}>
        {told.map(({ term, minutes: some, promised, money, isLoss = false }) => (
          <div key={term} data-loss={isLoss ? "" : undefined}>
            <dt>{term}</dt>
            <dd>
              {some === undefined || isLoss ? null : <Jaws value={some} of={scale} promised={promised} />}
            </dd>
            <dd className={styles.figure}>{some === undefined ? "" : formatMinutes(some)}</dd>
            <dd className={styles.figure}>{money === undefined ? "" : formatMoney(money)}</dd>
          </div>
        ))}
      </dl>
      {quoted?.p50 !== undefined && quoted.p80 !== undefined && quoted.p95 !== undefined ? (
        <p className="small soft">
          When it was quoted, like jobs said: half done in {formatMinutes(quoted.p50)}, four in five in{" "}
          {formatMinutes(quoted.p80)}, 19 in 20 in {formatMinutes(quoted.p95)}.
          {minutes === undefined ? "" : ` ${fellWords(minutes, quoted.p50, quoted.p80, quoted.p95)}`}
        </p>
      ) : null}
    </Section>
  );
}

/** Where the minutes that it took fell among what like jobs had said. */
function fellWords(minutes: number, p50: number, p80: number, p95: number): string {
  if (minutes <= p50) return "It took no longer than half of them.";
  if (minutes <= p80) return "It took no longer than four in five of them.";
  return minutes <= p95 ? "It was among the slow fifth of them." : "It was slower than 19 in 20 of them.";
}
