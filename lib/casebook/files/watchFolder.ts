import { existsSync, watch } from "node:fs";
import { basename, join } from "node:path";

/** Pause before a folder that is not there is looked for again. */
const absentMs = 2000;

/**
 * Tells of every change of what lies in a folder, not deeper, for as long as the process lives; also after the folder was
 * taken away, put back, or another was put in its place. One watch serves the whole folder, so that a change costs as much
 * among a hundred thousand files as among ten.
 *
 * @param tell gets the path of what has changed, come or gone; the folder's own where it cannot be said which
 */
export function watchFolder(folder: string, tell: (path: string) => void): void {
  const lookAgain = () => {
    setTimeout(() => {
      if (existsSync(folder)) {
        watchFolder(folder, tell);
        tell(folder);
      } else lookAgain();
    }, absentMs).unref();
  };
  try {
    const watcher = watch(folder, { persistent: false });
    let isOver = false;
    const end = () => {
      if (isOver) return;
      isOver = true;
      watcher.close();
      tell(folder);
      lookAgain();
    };
    watcher.on("change", (_, name) => {
      // A folder that is moved or taken away is told of by its own name.
      if (name === null || name === basename(folder)) end();
      else tell(join(folder, String(name)));
    });
    watcher.on("error", end);
  } catch {
    lookAgain();
  }
}
