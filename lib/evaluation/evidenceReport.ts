import { z } from "zod";
import { outcomeName } from "../reading/clauses/outcomeMeaning";
import { readEvidence } from "../reading/readEvidence";
import type { Reader } from "../reading/reader";
import { readInstrument } from "../reading/readInstrument";
import { benchNoteSchema } from "./notesReport";

/**
 * A problem of which every piece of evidence has its meanings: outcomes as `check outcome`, any of which is right; none where
 * the handbook has no entry that says the same.
 */
export const readProblemSchema = benchNoteSchema.safeExtend({
  means: z.array(z.string()),
  evidenceMeans: z.array(z.array(z.string())),
});
export type ReadProblem = z.infer<typeof readProblemSchema>;

/**
 * How evidence was read. `pieces` that mean something, with the share of those whose likeliest meaning is right, whatever it was
 * taken to be, and the mean of -log2 of the right meanings' shares; of all, how many were taken to be something that is right,
 * something else, and nothing.
 */
export type EvidenceReport = Readonly<{
  pieces: number;
  likeliestRight: number;
  logLossBits: number;
  read: Readonly<{ right: number; wrong: number; nothing: number }>;
}>;

/** Stands for a share of nothing. */
const leastShare = 1e-4;

/** Reads every piece of evidence as the bench does and holds it against what it means. */
export function evidenceReport(problems: readonly ReadProblem[], reader: Reader): EvidenceReport {
  const read = { right: 0, wrong: 0, nothing: 0 };
  let [pieces, likeliest, bits] = [0, 0, 0];
  for (const { instrument: words = "", says = "", evidence, evidenceMeans } of problems) {
    const instrument = readInstrument(words, reader, says);
    for (const [at, piece] of evidence.entries()) {
      const means = new Set(evidenceMeans[at]);
      const { finding, mayMean } = readEvidence(piece, reader, instrument);
      const taken = finding && `${finding.check} ${finding.outcome}`;
      read[taken === undefined ? "nothing" : means.has(taken) ? "right" : "wrong"] += 1;
      if (means.size === 0) continue;
      const shares = mayMean.map(({ meaning, share }) => ({ name: outcomeName(meaning), share }));
      const told = shares.length > 0 || taken === undefined ? shares : [{ name: taken, share: 1 }];
      const share = told.reduce((sum, one) => sum + (means.has(one.name) ? one.share : 0), 0);
      pieces += 1;
      likeliest += told[0] && means.has(told[0].name) ? 1 : 0;
      bits -= Math.log2(Math.max(share, leastShare));
    }
  }
  const rounded = (value: number) => Number(value.toFixed(4));
  return {
    pieces,
    likeliestRight: rounded(likeliest / Math.max(1, pieces)),
    logLossBits: rounded(bits / Math.max(1, pieces)),
    read,
  };
}
