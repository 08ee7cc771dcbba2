import "server-only";
import { basename, dirname, join } from "node:path";
import type { ContentFolders } from "@/lib/casebook/files/contentFolder";
import { watchFolder } from "@/lib/casebook/files/watchFolder";
import { freshenBench } from "@/lib/consult/bench/freshenBench";
import { entryFolders } from "@/lib/vocabulary/loadVocabulary";
import { openShop } from "./openShop";

/** Quiet time after the last change before the content is read again, so that a copy of many files is read once. */
const quietMs = 250;

/**
 * Watches the content and takes in what changes from outside (an editor, a pull, a synced folder): changed cases one by one,
 * all anew where that will not do.
 */
export function keepFresh({ vocabulary, cases }: ContentFolders): void {
  let timer: NodeJS.Timeout | undefined;
  const folders = [cases, vocabulary, ...entryFolders.map((name) => join(vocabulary, name))];
  const changed = new Set<string>();
  const note = (path: string) => {
    // What editors and saves leave behind (`.name`, `name~`) is no content.
    if (!folders.includes(path) && !/^[^.].*\.(md|yaml)$/.test(basename(path))) return;
    changed.add(path);
    clearTimeout(timer);
    timer = setTimeout(() => {
      const paths = [...changed];
      changed.clear();
      const areCases = paths.every((one) => dirname(one) === cases && one.endsWith(".md"));
      const shop = globalThis.benchloreShop;
      if (
        shop &&
        areCases &&
        freshenBench(
          shop,
          paths.map((one) => basename(one)),
        )
      )
        return;
      try {
        globalThis.benchloreShop = openShop();
      } catch (error) {
        // Half-written content must not take away what is open: it is read again at the next change.
        console.error(error instanceof Error ? error.message : error);
      }
    }, quietMs);
  };
  for (const folder of folders) watchFolder(folder, note);
}
