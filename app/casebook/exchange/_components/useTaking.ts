import { useRef, useState } from "react";
import { rowsAtOnce } from "@/lib/exchange/rows/rowsAtOnce";
import type { TakenRow } from "@/lib/exchange/rows/takenRow";
import { prepareRows, takeSome } from "../actions";

/** How far the taking in has come; `cutShort` says why it ended before the last row, empty where it did not. */
export type TakingProgress = Readonly<{
  isRunning: boolean;
  isOver: boolean;
  total: number;
  taken: readonly TakenRow[];
  cutShort: string;
}>;

const notBegun: TakingProgress = { isRunning: false, isOver: false, total: 0, taken: [], cutShort: "" };
const stopped = "Stopped as you asked. What is in stays in; bring the same table in again and it is known.";
const broken =
  "The connection to Benchlore broke. What is in stays in; bring the same table in again and it is known.";

/** Takes prepared rows in a few at a time, so that one sees how far it is and can stop between any two lots. */
export function useTaking() {
  const [progress, setProgress] = useState(notBegun);
  const isStopping = useRef(false);

  async function start(source: unknown, data: FormData) {
    isStopping.current = false;
    setProgress({ ...notBegun, isRunning: true });
    let taken: readonly TakenRow[] = [];
    let total = 0;
    let cutShort = "";
    try {
      const rows = await prepareRows(source, data);
      total = rows.length;
      for (let at = 0; at < total && !isStopping.current; at += rowsAtOnce) {
        taken = [...taken, ...(await takeSome(rows.slice(at, at + rowsAtOnce)))];
        setProgress({ isRunning: true, isOver: false, total, taken, cutShort });
      }
      if (taken.length < total) cutShort = stopped;
    } catch {
      cutShort = broken;
    }
    setProgress({ isRunning: false, isOver: true, total, taken, cutShort });
  }

  return {
    progress,
    start,
    stop: () => {
      isStopping.current = true;
    },
    forget: () => setProgress(notBegun),
  };
}
