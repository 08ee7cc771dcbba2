import type { SwapAnswer } from "@/lib/consult/answer";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { Section } from "../_components/Section";
import type { BenchQuery } from "./benchQuery";
import type { PistonView } from "./pistonView";
import { SwapCell } from "./SwapCell";
import styles from "./SwapGrid.module.css";
import { SwapPlaces } from "./SwapPlaces";
import { SwapVerdict } from "./SwapVerdict";

type Props = Readonly<{
  bench: BenchQuery;
  view: PistonView;
  swap: SwapAnswer | null;
  vocabulary: Vocabulary;
}>;

/** Every part that changes places against every place that it can be tried in. */
export function SwapGrid({ bench, view, swap, vocabulary }: Props) {
  const { guest, host, count, placeCheck } = view;
  const numbers = Array.from({ length: count }, (_, place) => place + 1);
  return (
    <Section title="Swaps" aside="Tap: free, drags, sticks, not tried.">
      <table className={styles.grid}>
        <caption className="heard">
          {guest.label} tried in {host.label.toLowerCase()}
        </caption>
        <thead>
          <tr>
            <td />
            {numbers.map((number) => (
              <th key={number} scope="col">
                {host.label.toLowerCase()} <b>{number}</b>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {numbers.map((row) => (
            <tr key={row}>
              <th scope="row">
                {guest.label.toLowerCase()} <b>{row}</b>
              </th>
              {numbers.map((column) => (
                <td key={column}>
                  <SwapCell
                    bench={bench}
                    pair={{ guest: `${guest.id} ${row}`, host: `${host.id} ${column}` }}
                    next={swap?.nextSwap ?? null}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {placeCheck ? <SwapPlaces bench={bench} check={placeCheck} vocabulary={vocabulary} /> : null}
      {swap ? <SwapVerdict swap={swap} vocabulary={vocabulary} /> : null}
    </Section>
  );
}
