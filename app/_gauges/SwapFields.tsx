import type { GaugedSwaps } from "@/lib/consult/gauge/gaugeAnswer";
import { swapResultSchema } from "../_bench/benchQuery";
import { SwapMark } from "../_bench/SwapMark";
import controls from "../_components/controls.module.css";
import { type GaugesFields, valveCounts, valvesOf } from "./gaugesFields";
import styles from "./SwapFields.module.css";

type Props = Readonly<{ fields: GaugesFields; swaps: GaugedSwaps | null }>;

/** Every piston against every casing: a choice in each cell, so that it fills in without JavaScript too. */
export function SwapFields({ fields, swaps }: Props) {
  const numbers = Array.from({ length: valvesOf(fields) }, (_, index) => index + 1);
  const isNext = (guest: string, host: string) =>
    swaps?.nextSwap?.includes(guest) === true && swaps.nextSwap.includes(host);
  return (
    <>
      <label className={styles.count}>
        <span>Valves</span>
        <select name="valves" defaultValue={valvesOf(fields)} className={controls.field}>
          {valveCounts.map((count) => (
            <option key={count}>{count}</option>
          ))}
        </select>
      </label>
      <table className={styles.grid}>
        <caption className="heard">Pistons tried in casings</caption>
        <thead>
          <tr>
            <td />
            {numbers.map((number) => (
              <th key={number} scope="col">
                casing <b>{number}</b>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {numbers.map((row) => (
            <tr key={row}>
              <th scope="row">
                piston <b>{row}</b>
              </th>
              {numbers.map((column) => {
                const name = `s${row}-${column}`;
                const result = swapResultSchema.safeParse(fields[name]).data ?? null;
                const next = isNext(`piston ${row}`, `casing ${column}`);
                return (
                  <td key={column}>
                    <div className={styles.cell} data-result={result ?? "untried"} data-next={next}>
                      <SwapMark result={result} />
                      <select
                        name={name}
                        defaultValue={result ?? ""}
                        aria-label={`Piston ${row} in casing ${column}`}
                      >
                        <option value="">{next ? "try this" : "–"}</option>
                        {swapResultSchema.options.map((option) => (
                          <option key={option}>{option}</option>
                        ))}
                      </select>
                    </div>
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
