import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Casebook, loadCasebook } from "@/lib/casebook/loadCasebook";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { type CorpusOptions, writeCorpus } from "./corpus";
import { timeOnce } from "./measure";
import { type Result, showSeconds } from "./result";
import { benchStart } from "./start";

/**
 * Writes a corpus into a temporary folder, starts the program on it and loads it from there; the folder goes again.
 *
 * @param say tells what is being done
 */
export function benchLoad(
  vocabulary: Vocabulary,
  options: CorpusOptions,
  say: (what: string) => void,
): Readonly<{ casebook: Casebook; results: readonly Result[] }> {
  const content = mkdtempSync(join(tmpdir(), "benchlore-benchmark-"));
  const folder = join(content, "cases");
  try {
    say("writing");
    mkdirSync(folder);
    let bytes = 0;
    for (const { file, text } of writeCorpus(vocabulary, options)) {
      writeFileSync(join(folder, file), text);
      bytes += Buffer.byteLength(text);
    }
    say("starting");
    const starting = benchStart(content, options.count);
    say("loading");
    const loading = timeOnce(() => loadCasebook(folder, vocabulary));
    const casebook = loading.value;
    if (casebook.problems.length > 0 || casebook.cases.size !== options.count) {
      throw new RangeError(
        `all ${options.count} cases must load; got ${casebook.cases.size} and ${JSON.stringify(casebook.problems[0])}; mend corpus.ts`,
      );
    }
    return {
      casebook,
      results: [
        { work: "size of all case files", shown: `${(bytes / 1e6).toFixed(1)} MB` },
        ...starting,
        { work: "load the casebook from Markdown", shown: showSeconds(loading) },
        {
          work: "the same, processor time a file",
          shown: `${((loading.processorMs * 1000) / options.count).toFixed(0)} µs`,
        },
      ],
    };
  } finally {
    rmSync(content, { recursive: true, force: true });
  }
}
