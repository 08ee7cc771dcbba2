import controls from "@/app/_components/controls.module.css";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import { rootCauses } from "@/lib/casebook/rootCauses";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { keepBuiltLesson } from "../actions";
import styles from "./BuildForm.module.css";
import { BuildRow } from "./BuildRow";
import type { BuildQuery } from "./buildQuery";

type Entry = Readonly<{ id: string; label: string }>;
type Props = Readonly<{
  query: BuildQuery;
  /** The jobs in it; `kase` undefined for what the casebook does not have. */
  chosen: readonly Readonly<{ id: string; kase: Case | undefined }>[];
  found: readonly Case[];
  families: readonly Entry[];
  vocabulary: Vocabulary;
}>;

/** As many as one looks through; fewer words find more. */
const mostFound = 30;

/** The whole lesson in one form: every button sends all of it, so that nothing typed is lost on the way. */
export function BuildForm({ query, chosen, found, families, vocabulary }: Props) {
  const metaOf = (kase: Case) =>
    `${kase.id}, ${labelOf(vocabulary.instruments, kase.instrument)}; it was ${rootCauses(kase)
      .map((id) => labelOf(vocabulary.causes, id).toLowerCase())
      .join(", ")}`;
  const open = found.filter(({ id }) => !query.cases.includes(id));
  return (
    <form action="/study/lessons/build#pick" method="get" className={styles.form}>
      {/* Enter in a field presses the first button: that one looks, and changes nothing. */}
      <button type="submit" className="heard" tabIndex={-1} aria-hidden="true">
        Look
      </button>
      {query.lesson === null ? null : <input type="hidden" name="lesson" value={query.lesson} />}
      <input type="hidden" name="base" value={query.base} />
      <div className={styles.about}>
        <label htmlFor="title">Title</label>
        <input
          id="title"
          name="title"
          defaultValue={query.title}
          maxLength={120}
          className={controls.field}
        />
        <label htmlFor="by">Put together by</label>
        <input id="by" name="by" defaultValue={query.by} maxLength={80} className={controls.field} />
        <label htmlFor="introduction">A word of introduction</label>
        <textarea
          id="introduction"
          name="introduction"
          defaultValue={query.introduction}
          maxLength={2000}
          rows={5}
          className={controls.field}
        />
      </div>
      <Section title="Jobs in it" aside={`${chosen.length}, in this order`}>
        {chosen.length === 0 ? <p className="soft">None yet. Add some below.</p> : null}
        <ol className={styles.rows}>
          {chosen.map(({ id, kase }, at) => (
            <BuildRow
              key={id}
              title={kase?.title ?? `${id} is not in the casebook`}
              meta={kase ? metaOf(kase) : ""}
            >
              <input type="hidden" name="cases" value={id} />
              {at === 0 ? null : (
                <button type="submit" name="up" value={id} className={controls.plain}>
                  Up<span className="heard">: {kase?.title ?? id}</span>
                </button>
              )}
              <button type="submit" name="drop" value={id} className={controls.plain}>
                Take out<span className="heard">: {kase?.title ?? id}</span>
              </button>
            </BuildRow>
          ))}
        </ol>
        <button type="submit" formAction={keepBuiltLesson} className={controls.lead}>
          Keep this lesson
        </button>
      </Section>
      <Section title="Add jobs" id="pick" aside={`${open.length} found`}>
        <div className={styles.find}>
          <label htmlFor="find">Words</label>
          <input id="find" name="find" type="search" defaultValue={query.find} className={controls.field} />
          <Choice name="family" label="Family" value={query.family} entries={families} />
          <Choice
            name="cause"
            label="It was"
            value={query.cause}
            entries={[...vocabulary.causes.values()].sort((a, b) => (a.label < b.label ? -1 : 1))}
          />
          <button type="submit" className={controls.plain}>
            Look for them
          </button>
        </div>
        {open.length === 0 ? <p className="soft">No job is like that. Ask for less.</p> : null}
        <ul className={styles.rows}>
          {open.slice(0, mostFound).map((kase) => (
            <BuildRow key={kase.id} title={kase.title} meta={metaOf(kase)}>
              <button type="submit" name="add" value={kase.id} className={controls.plain}>
                Add<span className="heard">: {kase.title}</span>
              </button>
            </BuildRow>
          ))}
        </ul>
        {open.length > mostFound ? (
          <p className="small soft">The first {mostFound} are shown; more words leave fewer.</p>
        ) : null}
      </Section>
    </form>
  );
}

function Choice({
  name,
  label,
  value,
  entries,
}: Readonly<{ name: string; label: string; value: string | null; entries: readonly Entry[] }>) {
  return (
    <>
      <label htmlFor={name}>{label}</label>
      <select id={name} name={name} defaultValue={value ?? ""} className={controls.field}>
        <option value="">Any</option>
        {entries.map((entry) => (
          <option key={entry.id} value={entry.id}>
            {entry.label}
          </option>
        ))}
      </select>
    </>
  );
}
