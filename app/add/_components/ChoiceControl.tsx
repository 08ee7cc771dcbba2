import controls from "@/app/_components/controls.module.css";
import type { DraftProblem } from "@/lib/consult/writeUp/draftCase";
import type { Choice, ChoiceGroup } from "./choices";
import { Field, problemProps } from "./Field";

type Props = Readonly<{
  name: string;
  label: string;
  value: string;
  /** What stands where nothing is chosen. */
  none: string;
  options?: readonly Choice[];
  groups?: readonly ChoiceGroup[];
  onText: (text: string) => void;
  problem: DraftProblem | undefined;
  className?: string;
}>;

/** A field to choose in. A value that is not among the choices is kept and shown as it stands. */
export function ChoiceControl(props: Props) {
  const { name, label, value, none, options = [], groups = [], onText, problem, className } = props;
  const isKnown =
    value === "" || [...options, ...groups.flatMap((group) => group.options)].some(({ id }) => id === value);
  return (
    <Field name={name} label={label} problem={problem} className={className}>
      <select
        id={name}
        name={name}
        value={value}
        className={controls.field}
        onChange={(event) => onText(event.target.value)}
        {...problemProps(name, problem)}
      >
        <option value="">{none}</option>
        {isKnown ? null : <option value={value}>{value} (not known)</option>}
        <Options options={options} />
        {groups.map((group) => (
          <optgroup key={group.label} label={group.label}>
            <Options options={group.options} />
          </optgroup>
        ))}
      </select>
    </Field>
  );
}

function Options({ options }: Readonly<{ options: readonly Choice[] }>) {
  return options.map(({ id, label }) => (
    <option key={id} value={id}>
      {label}
    </option>
  ));
}
