import "server-only";
import { basename, dirname, relative, sep } from "node:path";
import { watch } from "chokidar";
import type { ContentFolders } from "@/lib/casebook/files/contentFolder";
import { freshenBench } from "@/lib/consult/bench/freshenBench";
import { openShop } from "./openShop";

/** Quiet time after the last change before the content is read again, so that a copy of many files is read once. */
const quietMs = 250;

/**
 * Watches the content and takes in what changes from outside (an editor, a pull, a synced folder): changed cases one by one,
 * all anew where that will not do.
 */
export function keepFresh({ vocabulary, cases }: ContentFolders): void {
  let timer: NodeJS.Timeout | undefined;
  const changed = new Set<string>();
  const watcher = watch([vocabulary, cases], {
    ignoreInitial: true,
    followSymlinks: false,
    ignored: (path, stats) => stats?.isFile() === true && !/\.(md|yaml)$/.test(path),
  });
  watcher.on("all", (_, path) => {
    // What lies deeper than the case files, such as their earlier versions, is none of the casebook.
    if (relative(cases, path).includes(sep) && !relative(cases, path).startsWith("..")) return;
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
      globalThis.benchloreShop = openShop();
    }, quietMs);
  });
}
