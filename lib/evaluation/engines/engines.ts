import { naiveBayes } from "../baselines/naiveBayes";
import { nearestNeighbour } from "../baselines/nearestNeighbour";
import type { Engine } from "../engine";
import { pooledEngine } from "./pooledEngine";

/** The engines by the name they are asked for by: this project's own, and two plain ones to compare it with. */
export const engines: ReadonlyMap<string, Engine> = new Map([
  ["pooled", pooledEngine],
  ["nearest", nearestNeighbour],
  ["bayes", naiveBayes],
]);
