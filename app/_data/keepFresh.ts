import "server-only";
import { watch } from "chokidar";
import type { ContentFolders } from "@/lib/casebook/contentFolder";
import { openBench } from "@/lib/consult/openBench";

/** Quiet time after the last change before the content is read again, so that a copy of many files is read once. */
const quietMs = 250;

/** Watches the content and reads it again when files change from outside: an editor, a pull, a synced folder. */
export function keepFresh({ vocabulary, cases }: ContentFolders): void {
  let timer: NodeJS.Timeout | undefined;
  const watcher = watch([vocabulary, cases], {
    ignoreInitial: true,
    followSymlinks: false,
    ignored: (path, stats) => stats?.isFile() === true && !/\.(md|yaml)$/.test(path),
  });
  watcher.on("all", () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      globalThis.benchloreShop = openBench(process.env);
    }, quietMs);
  });
}
