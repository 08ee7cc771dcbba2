import Link from "next/link";
import type { LikelyCause, Reason } from "@/lib/consult/answer";
import { chanceIn100 } from "../_components/chanceIn100";
import controls from "../_components/controls.module.css";
import { Jaws } from "../_components/Jaws";
import { probabilityWords } from "../_components/probabilityWords";
import styles from "./Likely.module.css";

/** The titles of cases by id. */
export type CaseTitles = ReadonlyMap<string, Readonly<{ title: string }>>;

type Props = Readonly<{ cause: LikelyCause; titles: CaseTitles; isFirst: boolean }>;

/** As many cases as are named before the handbook has to do. */
const mostCases = 4;

const count = (many: number, one: string) => `${many} ${one}${many === 1 ? "" : "s"}`;

/** How many reasons stand on either side. */
function weighed({ for: pro, against }: LikelyCause): string {
  if (pro.length === 0 && against.length === 0) return "Nothing for or against it yet.";
  return `${pro.length} for, ${against.length} against.`;
}

/** One cause: shut, its chance as a bar, a number and words; open, what speaks for and against it and the cases behind. */
export function CauseRow({ cause, titles, isFirst }: Props) {
  const { id, label, probability, cases } = cause;
  return (
    <details className={styles.cause} open={isFirst}>
      <summary>
        <h3>{label}</h3>
        <span className={`${styles.chance} reading`}>
          {chanceIn100(probability)}
          <span className="heard"> in 100</span>
        </span>
        <span className={styles.line}>
          <Jaws value={100 * probability} />
          <span>
            {probabilityWords(probability)}. {weighed(cause)}
          </span>
          <span className={styles.cases}>
            {cases.length > 0 ? count(cases.length, "case") : "no case yet"}
          </span>
        </span>
      </summary>
      <div className={styles.weigh}>
        <Reasons heading="For it" reasons={cause.for} className={styles.for} />
        <Reasons heading="Against it" reasons={cause.against} className={styles.against} />
        <p className={styles.behind}>
          <Link className={controls.link} href={`/handbook/causes/${id}`} prefetch={false}>
            How it comes about, how to prove it
          </Link>
          {cases.slice(0, mostCases).map((caseId) => (
            <Link key={caseId} className={controls.link} href={`/casebook/${caseId}`} prefetch={false}>
              {titles.get(caseId)?.title ?? caseId}
            </Link>
          ))}
        </p>
      </div>
    </details>
  );
}

type ReasonsProps = Readonly<{ heading: string; reasons: readonly Reason[]; className: string | undefined }>;

function Reasons({ heading, reasons, className }: ReasonsProps) {
  return (
    <ul className={className} aria-label={heading}>
      {reasons.length === 0 ? <li className={styles.nothing}>nothing {heading.toLowerCase()}</li> : null}
      {reasons.map(({ check, outcome, words }) => (
        <li key={`${check} ${outcome} ${words}`}>{words}</li>
      ))}
    </ul>
  );
}
