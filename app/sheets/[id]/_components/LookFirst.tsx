import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import type { Case } from "@/lib/casebook/caseFile";
import type { Warning } from "@/lib/consult/answer";
import { checkedFirst } from "@/lib/consult/sheet/checkedFirst";
import styles from "./PlanPart.module.css";

type Props = Readonly<{
  sheet: SheetVersion;
  kase: Case;
  planned: NonNullable<Case["plan"]>[number];
  at: number;
  looks: Warning["checkFirst"];
}>;

/** What to check before a repair: ticked off, and kept as seen; what the path shows is ticked already. */
export function LookFirst({ sheet, kase, planned, at, looks }: Props) {
  const { seen } = planned;
  const made = checkedFirst(kase, planned);
  const byPath = checkedFirst(kase, { repair: planned.repair });
  return (
    <SheetForm sheet={sheet} wish="look" name={`look-${at}`} className={styles.look}>
      <input type="hidden" name="at" value={at} />
      {looks.length > 0 ? (
        <fieldset>
          <legend>
            First
            {seen
              ? `: seen, ${looks.filter(({ check }) => made.has(check)).length} of ${looks.length} made`
              : ""}
          </legend>
          {looks.map(({ check, label, why }) => (
            <div key={check} className={styles.first}>
              <input type="hidden" name="seen" value={check} />
              <label>
                <input type="checkbox" name="ticked" value={check} defaultChecked={made.has(check)} />
                <span>
                  {label}
                  <small>
                    {why}
                    {byPath.has(check) ? " The path shows it." : ""}
                  </small>
                </span>
              </label>
              {byPath.has(check) ? null : (
                <Link
                  className={controls.link}
                  href={`/sheets/${sheet.id}?what=check+${check}#log`}
                  prefetch={false}
                >
                  Log<span className="heard"> {label}</span>
                </Link>
              )}
            </div>
          ))}
        </fieldset>
      ) : null}
      <p className={controls.row}>
        <button type="submit" className={controls.plain}>
          {looks.length > 0 ? "Seen: keep the ticks" : "Seen: nothing to check first"}
        </button>
        {seen ? <span className="small soft">kept as seen</span> : null}
      </p>
    </SheetForm>
  );
}
