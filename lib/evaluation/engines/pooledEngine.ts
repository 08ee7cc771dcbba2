import { learnPosterior } from "../../diagnosis/learned/learnedPosterior";
import { seededRandom } from "../../diagnosis/learned/seededRandom";
import type { LabelledRows } from "../../similarity/learned/feature";
import type { Engine, LabelledTable } from "../engine";

/** Seed of the folds within the training rows: the same data give the same answers. */
const innerSeed = 1;

/** The engine of this project: learned similarity, learned likelihoods and their pool, all from the training rows. */
export const pooledEngine: Engine = {
  learn: (data, rows) => learnPosterior(withFeatures(data), rows, seededRandom(innerSeed)),
  visitsToRecount: (rowCount, columnCount) => rowCount * columnCount * columnCount,
};

/** The table in the engine's terms: words coded from 1, with 0 for unknown. */
function withFeatures({ columns, labels, classCount }: LabelledTable): LabelledRows {
  const features = columns.map((column) =>
    column.kind === "numeric"
      ? column
      : ({
          kind: "coded",
          name: column.name,
          valueCount: column.values.length,
          codes: column.codes.map((code) => code + 1),
        } as const),
  );
  return { features, labels, classCount };
}
