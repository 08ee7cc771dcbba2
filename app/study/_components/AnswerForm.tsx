import controls from "@/app/_components/controls.module.css";
import { groupWord } from "@/app/_components/groupWord";
import { Section } from "@/app/_components/Section";
import type { Cause } from "@/lib/vocabulary/cause";
import { giveAnswer } from "../actions";
import styles from "./AnswerForm.module.css";
import { type StudyQuery, sessionFields } from "./studyQuery";

type Entry = Readonly<{ id: string; label: string }>;
type Props = Readonly<{
  query: StudyQuery;
  causes: readonly Cause[];
  repairs: readonly Entry[];
  checks: readonly Entry[];
  /** What kept the last answer from being taken. */
  problems: readonly string[];
}>;

const ordinals = ["Likeliest cause", "Next likely", "And then"];
/** Blank is left to the browser: a default would undo what was chosen before the page had woken up. */
const chosen = (id: string | null) => id || undefined;
const byLabel = (a: Entry, b: Entry) => (a.label < b.label ? -1 : 1);

/** What one thinks it is and how sure, what one would do, and what one would look at before: a form that works without JavaScript. */
export function AnswerForm({ query, causes, repairs, checks, problems }: Props) {
  const groups = [...new Set(causes.map(({ group }) => group))].sort();
  const fault = problems.length > 0 ? "answer-problems" : undefined;
  return (
    <Section
      title="What do you think it is?"
      id="answer"
      className="unprinted"
      aside="whenever you are ready"
    >
      {fault ? (
        <div className={styles.problems} id={fault} role="alert">
          <ul>
            {problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
        </div>
      ) : null}
      <form action={giveAnswer} className={styles.form}>
        {sessionFields(query).map(([name, value], at) => (
          <input key={`${at} ${name}`} type="hidden" name={name} value={value} />
        ))}
        {query.rows.map((row, at) => (
          <div key={ordinals[at]} className={styles.row}>
            <div>
              <label htmlFor={`cause-${at}`}>{ordinals[at]}</label>
              <select
                id={`cause-${at}`}
                name="cause"
                defaultValue={chosen(row.cause)}
                className={controls.field}
                aria-describedby={fault}
              >
                <option value="">{at === 0 ? "Choose a cause" : "None"}</option>
                {groups.map((group) => (
                  <optgroup key={group} label={groupWord(group)}>
                    <Options entries={causes.filter((cause) => cause.group === group)} />
                  </optgroup>
                ))}
              </select>
            </div>
            <div>
              <label htmlFor={`sure-${at}`}>
                in 100<span className="heard">, how sure of: {ordinals[at]?.toLowerCase()}</span>
              </label>
              <input
                id={`sure-${at}`}
                name="sure"
                defaultValue={row.sure}
                inputMode="decimal"
                autoComplete="off"
                maxLength={6}
                className={controls.field}
                aria-describedby={fault}
              />
            </div>
          </div>
        ))}
        <p className="small soft">
          How sure you are, in 100: together at most 100. What is left over is spread over all other causes.
        </p>
        <div>
          <label htmlFor="repair">The repair you would do</label>
          <select id="repair" name="repair" defaultValue={chosen(query.repair)} className={controls.field}>
            <option value="">Not said</option>
            <Options entries={repairs} />
          </select>
        </div>
        <div>
          <label htmlFor="first">And check first</label>
          <select id="first" name="first" defaultValue={chosen(query.first)} className={controls.field}>
            <option value="">Not said</option>
            <Options entries={checks} />
          </select>
        </div>
        <button type="submit" name="answer" value="yes" className={controls.lead}>
          That is my answer
        </button>
      </form>
    </Section>
  );
}

function Options({ entries }: Readonly<{ entries: readonly Entry[] }>) {
  return [...entries].sort(byLabel).map(({ id, label }) => (
    <option key={id} value={id}>
      {label}
    </option>
  ));
}
