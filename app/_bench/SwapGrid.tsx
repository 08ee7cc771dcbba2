import Link from "next/link";
import type { Answer, SwapAnswer, SwapTried } from "@/lib/consult/answer";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import controls from "../_components/controls.module.css";
import { Section } from "../_components/Section";
import type { BenchQuery } from "./benchQuery";
import { gaugesOfBench } from "./gaugesOfBench";
import type { PistonView } from "./pistonView";
import { SwapCell } from "./SwapCell";
import styles from "./SwapGrid.module.css";
import { SwapPlaces } from "./SwapPlaces";
import { SwapVerdict } from "./SwapVerdict";

type Props = Readonly<{
  bench: BenchQuery;
  view: PistonView;
  swap: SwapAnswer | null;
  understood: Answer["understood"];
  vocabulary: Vocabulary;
}>;

const badness = { free: 0, drags: 1, sticks: 2 } as const;

/** The test of a pair that went worst. */
function worstOf(swap: SwapAnswer | null, guest: string, host: string): SwapTried | undefined {
  const own = (swap?.tests ?? []).filter(({ a, b }) => a === guest && b === host);
  return own.reduce<SwapTried | undefined>(
    (worst, test) => (worst && badness[worst.result] >= badness[test.result] ? worst : test),
    undefined,
  );
}

/** Every part that changes places against every place that it can be tried in. */
export function SwapGrid({ bench, view, swap, understood, vocabulary }: Props) {
  const { guest, host, count } = view;
  const numbers = Array.from({ length: count }, (_, place) => place + 1);
  return (
    <Section
      title="Swaps"
      aside="Tap: free, drags, sticks, not tried."
      {...(swap ? {} : { className: "unprinted" })}
    >
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
                    tried={worstOf(swap, `${guest.id} ${row}`, `${host.id} ${column}`)}
                    next={swap?.nextSwap ?? null}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {swap?.tests.some(({ source }) => source !== "swaps") ? (
        <p className={styles.legend}>said: read from your words. its own: how it travels in its own place.</p>
      ) : null}
      <SwapPlaces bench={bench} tests={swap?.tests ?? []} view={view} vocabulary={vocabulary} />
      {swap ? <SwapVerdict swap={swap} vocabulary={vocabulary} /> : null}
      <p>
        <Link className={controls.word} href={gaugesOfBench(bench, understood, view)} prefetch={false}>
          Gauge the bore
        </Link>
      </p>
    </Section>
  );
}
