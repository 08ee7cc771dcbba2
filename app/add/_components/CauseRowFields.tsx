import type { CauseRow } from "@/lib/casebook/form/caseForm";
import type { DraftProblem } from "@/lib/consult/writeUp/draftCase";
import styles from "./CauseRowFields.module.css";
import { ChoiceControl } from "./ChoiceControl";
import type { Choices } from "./choices";
import { TextControl } from "./TextControl";

type Props = Readonly<{
  at: number;
  row: CauseRow;
  choices: Choices;
  change: (change: Partial<CauseRow>) => void;
  problemAt: (control: string) => DraftProblem | undefined;
}>;

const roles = [
  { id: "root", label: "Root" },
  { id: "contributing", label: "Helped it along" },
  { id: "brought-on", label: "Our repair brought it on" },
];

/** One cause of the case, on which part and in which role. */
export function CauseRowFields({ at, row, choices, change, problemAt }: Props) {
  const name = (field: string) => `cause.${at}.${field}`;
  return (
    <li className={styles.cause}>
      <input type="hidden" name={name("from")} value={row.from} />
      <ChoiceControl
        name={name("cause")}
        label="Cause"
        value={row.cause}
        none="Not chosen"
        groups={choices.causes}
        onText={(cause) => change({ cause })}
        problem={problemAt(name("cause"))}
      />
      <TextControl
        name={name("part")}
        label="Part"
        value={row.part}
        list="parts"
        onText={(part) => change({ part })}
        problem={problemAt(name("part"))}
      />
      <ChoiceControl
        name={name("role")}
        label="Role"
        value={row.role}
        none="Not chosen"
        options={roles}
        onText={(role) => change({ role })}
        problem={problemAt(name("role"))}
      />
    </li>
  );
}
