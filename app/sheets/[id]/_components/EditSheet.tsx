import { instrumentOptions } from "@/app/_bench/instrumentOptions";
import controls from "@/app/_components/controls.module.css";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import styles from "@/app/sheets/_components/SheetForm.module.css";
import { TypedChoice } from "@/app/sheets/_components/TypedChoice";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { Case } from "@/lib/casebook/caseFile";
import { formOfFields } from "@/lib/casebook/form/caseForm";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

type Props = Readonly<{ sheet: SheetVersion; kase: Case; vocabulary: Vocabulary }>;

/** What came in, to be put right: the instrument, the complaint, the state on arrival. */
export function EditSheet({ sheet, kase, vocabulary }: Props) {
  const form = formOfFields(kase, kase.story);
  const { instruments } = vocabulary;
  const groups = instrumentOptions(vocabulary);
  const isListed = groups.some(({ options }) => options.some(({ id }) => id === kase.instrument));
  const own = { id: kase.instrument, label: instruments.get(kase.instrument)?.label ?? kase.instrument };
  return (
    <SheetForm
      sheet={sheet}
      wish="edit"
      name="edit"
      fold={{
        summary: "Put this right, note the state on arrival",
        className: "unprinted",
        summaryClassName: controls.opens,
      }}
    >
      <div className={styles.fields}>
        <TypedField name="title" label="Title" value={form.title} className={styles.wide} />
        <TypedChoice
          name="instrument"
          label="Instrument"
          value={form.instrument}
          options={isListed ? [] : [own]}
          groups={groups}
        />
        <TypedField name="maker" label="Maker" value={form.maker} />
        <TypedField name="model" label="Model" value={form.model} />
        <TypedField
          name="complaint"
          label="Complaint, in the customer's words"
          value={form.complaint}
          rows={3}
          className={styles.half}
        />
        <TypedField
          name="arrival"
          label="State on arrival, a line each"
          value={form.arrival}
          rows={3}
          className={styles.half}
        />
        <TypedField name="received" label="Taken in" value={form.received} kind="day" />
      </div>
      <p className={styles.buttons}>
        <button type="submit" className={controls.lead}>
          Keep it so
        </button>
      </p>
    </SheetForm>
  );
}
