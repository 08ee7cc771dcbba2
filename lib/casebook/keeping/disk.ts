import {
  closeSync,
  fsyncSync,
  linkSync,
  lstatSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
  truncateSync,
  writeSync,
} from "node:fs";
import { dirname } from "node:path";

/** What a save does to the disk, call by call, so that a test can let any one of them fail. */
export type Disk = Readonly<{
  /** Makes a folder in one that may be missing too; refuses either where it leads elsewhere by a link. */
  makeFolder: (path: string) => void;
  /** Writes a file that is not there yet, and flushes it. */
  writeWhole: (path: string, bytes: Uint8Array) => void;
  /** Gives a file a second name; fails where that name is taken. */
  link: (from: string, to: string) => void;
  rename: (from: string, to: string) => void;
  /** Empties a file; needs no room. */
  empty: (path: string) => void;
  /** Takes a file away; well if there is none. */
  remove: (path: string) => void;
  /** Makes the names in a folder last through a power cut. */
  flushFolder: (path: string) => void;
}>;

/** The disk as it is. */
export const realDisk: Disk = {
  makeFolder: (path) => {
    // From above, so that nothing is made where a link leads.
    for (const folder of [dirname(path), path]) {
      mkdirSync(folder, { recursive: true });
      if (lstatSync(folder).isSymbolicLink()) {
        const error = new Error("the folder of revisions must be a folder; it is a link to elsewhere");
        throw Object.assign(error, { code: "EACCES" });
      }
    }
  },
  writeWhole: (path, bytes) => {
    const handle = openSync(path, "wx");
    try {
      for (let written = 0; written < bytes.length; ) written += writeSync(handle, bytes, written);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  },
  link: linkSync,
  rename: renameSync,
  empty: (path) => truncateSync(path, 0),
  remove: (path) => rmSync(path, { force: true }),
  flushFolder: (path) => {
    const handle = openSync(path, "r");
    try {
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  },
};
