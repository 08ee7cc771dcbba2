import { chanceIn100 } from "@/app/_components/chanceIn100";
import { Section } from "@/app/_components/Section";
import { choicesOf } from "@/app/add/_components/choices";
import fields from "@/app/sheets/_components/SheetForm.module.css";
import { TypedChoice } from "@/app/sheets/_components/TypedChoice";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { Case } from "@/lib/casebook/caseFile";
import { againstHandbook } from "@/lib/consult/sheet/againstHandbook";
import type { ProposedCause } from "@/lib/consult/sheet/proposeClosing";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { Against } from "./Against";
import styles from "./CauseRows.module.css";

type Props = Readonly<{ kase: Case; causes: readonly ProposedCause[]; vocabulary: Vocabulary }>;

const roles = [
  { id: "root", label: "Root" },
  { id: "contributing", label: "Helped it along" },
  { id: "brought-on", label: "Our repair brought it on" },
];
const blank = { from: "", cause: "", part: "", role: "", probability: undefined };

/** What it was: the causes as the bench ranks them, each with its role, and what the handbook has against them. */
export function CauseRows({ kase, causes, vocabulary }: Props) {
  const choices = choicesOf(vocabulary);
  const rows: readonly ProposedCause[] = [...causes, blank];
  const against = [...againstHandbook(kase, [...vocabulary.causes.keys()], vocabulary)].filter(
    ([, list]) => list.length > 0,
  );
  return (
    <Section title="What it was" aside="proposed from what was found; put it right">
      <ul className={styles.causes}>
        {rows.map((row, at) => (
          <li key={`cause ${at}`} className={fields.fields}>
            <input type="hidden" name={`cause.${at}.from`} value={row.from} />
            <TypedChoice
              name={`cause.${at}.cause`}
              label={`Cause ${at + 1}`}
              value={row.cause}
              none="None"
              groups={choices.causes}
              {...(row.probability === undefined
                ? {}
                : { hint: `${chanceIn100(row.probability)} in 100 by what was found` })}
            />
            <TypedField
              name={`cause.${at}.part`}
              label={`Part of cause ${at + 1}`}
              value={row.part}
              list="parts"
            />
            <TypedChoice
              name={`cause.${at}.role`}
              label={`Role of cause ${at + 1}`}
              value={row.role}
              none="Not said"
              options={roles}
            />
          </li>
        ))}
      </ul>
      <Against
        watched={rows.map((_, at) => `cause.${at}.cause`)}
        chosen={rows.map(({ cause }) => cause)}
        against={Object.fromEntries(
          against.map(([id, list]) => [
            id,
            {
              label: vocabulary.causes.get(id)?.label ?? id,
              findings: list.map(({ words, often }) => ({ words, often })),
            },
          ]),
        )}
      />
    </Section>
  );
}
