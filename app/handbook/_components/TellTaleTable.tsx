import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { labelOf } from "@/app/_components/labelOf";
import type { CheckTells, TellTale } from "@/lib/consult/causes/tellTales";
import type { JudgedTell } from "@/lib/consult/record/judgeTells";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { SeenHere } from "./SeenHere";
import styles from "./TellTaleTable.module.css";

type Props = Readonly<{
  told: readonly CheckTells[];
  /** The same words beside the cases. */
  judged: readonly JudgedTell[];
  vocabulary: Vocabulary;
}>;

const shownFirst = 8;

/** What each check tells of a cause, both ways, in words. */
export function TellTaleTable({ told, ...rest }: Props) {
  const less = told.slice(shownFirst);
  return (
    <>
      <Table {...rest} told={told.slice(0, shownFirst)} label="The most telling checks" />
      {less.length > 0 ? (
        <details>
          <summary className={controls.opens}>{less.length} checks that tell less</summary>
          <Table {...rest} told={less} label="Checks that tell less" />
        </details>
      ) : null}
    </>
  );
}

function Table({ told, judged, vocabulary, label }: Props & Readonly<{ label: string }>) {
  return (
    <table className={styles.table} aria-label={label}>
      <thead>
        <tr>
          <th scope="col">Finding</th>
          <th scope="col">Handbook says</th>
          <th scope="col">Seen here</th>
          <th scope="col">For or against</th>
        </tr>
      </thead>
      {told.map(({ check, others, tells }) => (
        <tbody key={`${check} ${others}`}>
          <tr>
            <th scope="rowgroup" colSpan={4} className={styles.check}>
              <Link className={controls.link} href={`/handbook/checks/${check}`} prefetch={false}>
                {labelOf(vocabulary.checks, check)}
              </Link>
              {others ? <span> on the others</span> : null}
            </th>
          </tr>
          {tells.map((tell) => (
            <tr key={tell.outcome}>
              <td>{outcomeLabel(vocabulary, check, tell.outcome)}</td>
              <td>{tell.often}</td>
              <td>
                <SeenHere
                  judged={judged.find(
                    (one) => one.check === check && one.others === others && one.outcome === tell.outcome,
                  )}
                />
              </td>
              <td data-says={says(tell)}>{saysWords[says(tell)]}</td>
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  );
}

/** Under one decibel of evidence nobody feels a difference; ten are a factor of ten in the odds. Source: Good 1950. */
const least = 1;
const strong = 5;

function says({ decibans }: TellTale): keyof typeof saysWords {
  if (Math.abs(decibans) < least) return "little";
  if (decibans > 0) return decibans >= strong ? "strongly-for" : "for";
  return decibans <= -strong ? "strongly-against" : "against";
}

const saysWords = {
  "strongly-for": "+ strongly for",
  for: "+ for",
  little: "hardly either",
  against: "\u2212 against",
  "strongly-against": "\u2212 strongly against",
} as const;

const outcomeLabel = ({ checks }: Vocabulary, check: string, outcome: string) =>
  checks.get(check)?.outcomes.find(({ id }) => id === outcome)?.label ?? outcome;
