import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Case } from "@/lib/casebook/caseFile";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { readCorpus, writeCorpus } from "./corpus";
import { writeLearners } from "./learners";
import { quantile } from "./measure";
import { seedRandom } from "./random";
import type { Result } from "./result";
import { serveApp } from "./serveApp";

type Sizes = Readonly<{ cases: number; learners: number; seed: number }>;

const asks = 100;
/** A page that is asked for before the timing, as often as this, so that the engine compiles what it will compile anyway. */
const warmUp = 10;
/** Half a year after the first session: much has come back by then. */
const today = "2026-07-01";
const mostNamed = 3;

/**
 * Serves a corpus with many learners by the built app, each over the loopback as a browser would ask, and times the pages of
 * Study from the question to the last byte.
 *
 * @throws when a page does not answer with 200, or does not show what it is there for
 */
export async function benchStudy(
  vocabulary: Vocabulary,
  { cases: count, learners, seed }: Sizes,
  say: (what: string) => void,
): Promise<Result[]> {
  const content = mkdtempSync(join(tmpdir(), "benchlore-benchmark-"));
  try {
    say("writing");
    const fit = writeContent(content, vocabulary, { cases: count, learners, seed });
    say("starting the server");
    const app = await serveApp({ content, today });
    try {
      const random = seedRandom(seed);
      const learner = () => `learner-${random.whole(1, learners)}`;
      const jobOf = () => {
        const kase = random.pick(fit);
        if (!kase) throw new RangeError("some case must be fit for study; none is; mend corpus.ts");
        return new URLSearchParams([["case", kase.id], ...asksOf(kase)]).toString();
      };
      const rootOf = (query: string) =>
        fit.find(({ id }) => new URLSearchParams(query).get("case") === id)?.causes[0]?.cause ?? "";
      const answerOf = () => {
        const query = jobOf();
        return `/study?${query}&cause=${rootOf(query)}&sure=70&answer=yes`;
      };
      // The server fills its search index between requests; a search waits until that is done.
      await app.ask("/casebook?q=valve");
      const first = await app.ask("/study/learners");
      const pages: readonly (readonly [string, () => string, RegExp])[] = [
        ["Study: what comes back, families, lessons", () => "/study", /To see again/],
        ["a job under way", () => `/study?${jobOf()}`, /Ask for a check/],
        ["the feedback", answerOf, /It was: /],
        ["how a learner stands", () => `/study/learners/${learner()}`, /By cause/],
        ["all learners, the teacher's view", () => "/study/learners?order=need", /What is missed most/],
      ];
      const results: Result[] = [
        { work: "all learners, asked for the first time", shown: `${first.ms.toFixed(0)} ms` },
      ];
      for (const [work, path, shows] of pages) {
        say(work);
        const times: number[] = [];
        for (let number = -warmUp; number < asks; number++) {
          const { ms, text } = await app.ask(path(), { learner: learner() });
          if (!shows.test(text))
            throw new RangeError(`${work} must show ${shows}; it does not; mend the page`);
          if (number >= 0) times.push(ms);
        }
        results.push({
          work,
          shown: `${quantile(times, 0.5).toFixed(0)} / ${quantile(times, 0.95).toFixed(0)} ms`,
        });
      }
      return results;
    } finally {
      await app.stop();
    }
  } finally {
    rmSync(content, { recursive: true, force: true });
  }
}

/** @returns the cases that can be worked through */
function writeContent(
  content: string,
  vocabulary: Vocabulary,
  { cases: count, learners, seed }: Sizes,
): Case[] {
  for (const folder of ["cases", "learners"]) mkdirSync(join(content, folder));
  symlinkSync(resolve("content/vocabulary"), join(content, "vocabulary"));
  for (const { file, text } of writeCorpus(vocabulary, { seed, count }))
    writeFileSync(join(content, "cases", file), text);
  const fit = [...readCorpus(vocabulary, { seed, count })].filter(isFitForStudy);
  const drawn = { seed, cases: fit.map(({ id }) => id), causes: [...vocabulary.causes.keys()] };
  for (const { file, text } of writeLearners(learners, drawn))
    writeFileSync(join(content, "learners", file), text);
  return fit;
}

/** The first checks of a job's own path, as somebody might ask for them. */
const asksOf = ({ path }: Case): string[][] =>
  path.flatMap((step) => ("check" in step ? [["ask", String(step.check)]] : [])).slice(0, mostNamed + 1);
