import { LikeCase } from "@/app/_components/LikeCase";
import { Section } from "@/app/_components/Section";
import { TypedChoice } from "@/app/sheets/_components/TypedChoice";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { Case } from "@/lib/casebook/caseFile";
import type { SimilarCase } from "@/lib/consult/answer";
import styles from "./LikeRows.module.css";

type Props = Readonly<{
  kase: Case;
  similar: readonly SimilarCase[];
  cases: ReadonlyMap<string, Case>;
}>;

const shown = 3;
const lessons = [
  { id: "held", label: "It held here" },
  { id: "failed", label: "It did not hold here" },
];

/** The cases that the job looks like, and those whose plan it followed: what is different, and whether their lesson held. */
export function LikeRows({ kase, similar, cases }: Props) {
  const alike = similar.slice(0, shown);
  const known = new Set(alike.map((like) => like.case));
  const followed = [...new Set(kase.plan?.flatMap(({ from }) => from ?? []))].flatMap((id) =>
    known.has(id) ? [] : (cases.get(id) ?? []),
  );
  const rows = [
    ...alike.map((like) => ({ id: like.case, title: like.title, lesson: like.lessons[0], like })),
    ...followed.map(({ id, title, lessons: [lesson] }) => ({ id, title, lesson, like: undefined })),
  ];
  return (
    <Section title="It looks like these" aside="what is different is what the next one wants to know">
      {rows.length === 0 ? <p className="small soft">No other case is like it.</p> : null}
      <div className={styles.rows}>
        {rows.map(({ id, title, lesson, like }, at) => (
          <div key={id} className={styles.row} role="group" aria-label={title}>
            <input type="hidden" name={`like.${at}.case`} value={id} />
            {like ? (
              <LikeCase like={like} />
            ) : (
              <p>
                Its plan was followed: {title} (case {id}). {lesson}
              </p>
            )}
            <TypedField
              name={`like.${at}.different`}
              label={`This looks like “${title}”; what is different?`}
              value={kase.like?.find((one) => one.case === id)?.different ?? ""}
            />
            {lesson ? (
              <TypedChoice
                name={`like.${at}.lesson`}
                label="Did its lesson hold here?"
                none="Not tried on this job"
                options={lessons}
                value={kase.like?.find((one) => one.case === id)?.lesson ?? ""}
              />
            ) : null}
          </div>
        ))}
      </div>
    </Section>
  );
}
