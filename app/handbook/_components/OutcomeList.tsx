import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import type { OutcomeTells, ToldCause } from "@/lib/consult/causes/outcomeTells";
import type { JudgedTell } from "@/lib/consult/record/judgeTells";
import type { Check } from "@/lib/vocabulary/check";
import styles from "./OutcomeList.module.css";
import { SeenHere } from "./SeenHere";

type Props = Readonly<{
  check: Check;
  told: readonly OutcomeTells[];
  /** In how many jobs each outcome was found. */
  found: ReadonlyMap<string, number>;
  /** The words that the handbook says of this check, beside the cases. */
  judged: readonly JudgedTell[];
}>;

/** What a check can find, and which causes each finding speaks for and against. */
export function OutcomeList({ check, told, found, judged }: Props) {
  const jobs = [...found.values()].reduce((sum, count) => sum + count, 0);
  const judgedOf = (outcome: string) => judged.filter((one) => one.outcome === outcome);
  return (
    <ul>
      {told.map((tells) => (
        <li key={tells.outcome} className={styles.outcome}>
          <h3>
            {check.outcomes.find(({ id }) => id === tells.outcome)?.label ?? tells.outcome}
            {tells.outcome === check.normal ? <span className={styles.normal}>as it should be</span> : null}
            {jobs > 0 ? (
              <span className={styles.found}>
                found in {found.get(tells.outcome) ?? 0} of {jobs}
              </span>
            ) : null}
          </h3>
          <Causes side="for" words="+ speaks for" causes={tells.for} judged={judgedOf(tells.outcome)} />
          <Causes
            side="against"
            words={"\u2212 speaks against"}
            causes={tells.against}
            judged={judgedOf(tells.outcome)}
          />
          {tells.for.length + tells.against.length === 0 ? (
            <p className="small soft">Says little about any one cause.</p>
          ) : null}
        </li>
      ))}
    </ul>
  );
}

type CausesProps = Readonly<{
  side: "for" | "against";
  words: string;
  causes: readonly ToldCause[];
  judged: readonly JudgedTell[];
}>;

function Causes({ side, words, causes, judged }: CausesProps) {
  if (causes.length === 0) return null;
  return (
    <div className={styles.side} data-side={side}>
      <span>{words}</span>
      <ul>
        {causes.map(({ id, label, often }) => (
          <li key={id}>
            <Link className={controls.link} href={`/handbook/causes/${id}`} prefetch={false}>
              {label}
            </Link>
            <small>
              {often}
              <SeenOfCause judged={judged.find(({ cause }) => cause === id)} />
            </small>
          </li>
        ))}
      </ul>
    </div>
  );
}

function SeenOfCause({ judged }: Readonly<{ judged: JudgedTell | undefined }>) {
  if (!judged || judged.looked === 0) return null;
  return (
    <>
      ; here <SeenHere judged={judged} />
    </>
  );
}
