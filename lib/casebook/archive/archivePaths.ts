import { idSchema } from "../../vocabulary/words";

/** What a file of an archive is, by its path. */
export type ArchivePath =
  | Readonly<{ kind: "case" | "lesson"; id: string }>
  | Readonly<{ kind: "photo"; segments: readonly string[] }>
  | Readonly<{ kind: "folder" }>;

/** One folder or file name of a photo: no dot at its beginning, nothing that any system reads as more than a name. */
const segmentPattern = /^[a-z0-9_][a-z0-9_. -]{0,99}$/i;
const photoPattern = /\.(jpe?g|png|webp|avif|gif)$/i;
/** Names that one system takes for a device, with or without an ending. */
const devicePattern = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;
const deepest = 4;
const topFolders: ReadonlySet<string> = new Set(["cases", "lessons", "photos"]);

/**
 * Tells what a path of an archive means. What is let in is named here; everything else is refused, so that no path can lead
 * out of the three folders.
 *
 * @returns undefined for any path that an export would not have written
 * @example readArchivePath("cases/24-031.md") // { kind: "case", id: "24-031" }
 */
export function readArchivePath(path: string): ArchivePath | undefined {
  const isFolder = path.endsWith("/");
  const segments = (isFolder ? path.slice(0, -1) : path).split("/");
  const [top, name = ""] = segments;
  if (isFolder && segments.length === 1 && topFolders.has(top ?? "")) return { kind: "folder" };
  if (top === "cases" || top === "lessons") {
    const id = segments.length === 2 && name.endsWith(".md") ? name.slice(0, -".md".length) : "";
    return idSchema.safeParse(id).success ? { kind: top === "cases" ? "case" : "lesson", id } : undefined;
  }
  const below = segments.slice(1);
  const isSafe =
    top === "photos" &&
    below.length > 0 &&
    below.length <= deepest &&
    below.every((one) => segmentPattern.test(one) && !devicePattern.test(one) && !/[. ]$/.test(one));
  if (!isSafe) return undefined;
  if (isFolder) return { kind: "folder" };
  return photoPattern.test(path) ? { kind: "photo", segments: below } : undefined;
}
