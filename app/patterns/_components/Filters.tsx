import controls from "@/app/_components/controls.module.css";
import styles from "./Filters.module.css";
import type { PatternsQuery } from "./patternsQuery";

type Choice = Readonly<{ value: string; label: string }>;
type Props = Readonly<{ query: PatternsQuery; families: readonly Choice[]; years: readonly Choice[] }>;

/** Which jobs are looked at: a plain form, sent to the address. */
export function Filters({ query, families, years }: Props) {
  return (
    <form action="/patterns" method="get" className={`${styles.filters} unprinted`}>
      {query.by === "cause" ? null : <input type="hidden" name="by" value={query.by} />}
      <Choose name="family" label="Family" all="Every family" choices={families} chosen={query.family} />
      <Choose name="year" label="Year taken in" all="Every year" choices={years} chosen={query.year} />
      <button type="submit" className={controls.lead}>
        Show these
      </button>
    </form>
  );
}

type ChooseProps = Readonly<{
  name: string;
  label: string;
  all: string;
  choices: readonly Choice[];
  chosen: string | undefined;
}>;

function Choose({ name, label, all, choices, chosen }: ChooseProps) {
  return (
    <label>
      <span>{label}</span>
      <select key={chosen} name={name} defaultValue={chosen ?? ""} className={controls.field}>
        <option value="">{all}</option>
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    </label>
  );
}
