import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { seededRandom } from "@/lib/diagnosis/learned/seededRandom";
import { stratifiedFolds } from "@/lib/diagnosis/learned/stratifiedFolds";
import { naiveBayes } from "@/lib/evaluation/baselines/naiveBayes";
import { nearestNeighbour } from "@/lib/evaluation/baselines/nearestNeighbour";
import type { Engine } from "@/lib/evaluation/engine";
import { pooledEngine } from "@/lib/evaluation/engines/pooledEngine";
import { crossValidate, leaveOneOutOfTable } from "@/lib/evaluation/evaluateTable";
import { reportOf } from "@/lib/evaluation/tableReport";
import { readFolds } from "@/lib/evaluation/tables/readFolds";
import { readTable } from "@/lib/evaluation/tables/readTable";

/*
 * Data: UCI Machine Learning Repository, as carried by the Debian package weka 3.6.14-3; the folds are stratified, 10, seed 1.
 * Counts: IBk with k = 1 and NaiveBayes of Weka 3.6.14 with its defaults on these folds, and leave-one-out.
 */
const text = (name: string) => readFileSync(new URL(`data/${name}`, import.meta.url), "utf8");
const noClock = () => 0;

function open(name: string) {
  const table = readTable(text(`${name}.arff`), `${name}.arff`);
  const data = { columns: table.columns, labels: table.labels, classCount: table.classes.length };
  const folds = readFolds(text(`folds_${name}.csv`), `folds_${name}.csv`, {
    rowCount: table.rowCount,
    classOf: (row) => table.classes[table.labels[row] ?? 0],
  });
  const deal = (count: number) => stratifiedFolds(table.labels, count, seededRandom(1));
  return {
    onFolds: (engine: Engine) => reportOf(crossValidate(data, engine, folds, noClock)),
    leftOut: (engine: Engine) => reportOf(leaveOneOutOfTable(data, engine, deal, noClock)),
  };
}

const soybean = open("soybean");
const vote = open("vote");
const contactLenses = open("contact-lenses");

describe("plain learners on open data, which prove the harness", () => {
  it("nearest neighbour is right as often as published programs", () => {
    expect(soybean.onFolds(nearestNeighbour).correct).toBe(623);
    expect(soybean.leftOut(nearestNeighbour).correct).toBe(624);
    expect(vote.onFolds(nearestNeighbour).correct).toBe(402);
    expect(contactLenses.onFolds(nearestNeighbour).correct).toBe(19);
  });

  it("naive Bayes is right as often, ranks as well and is as sure", () => {
    const folds = soybean.onFolds(naiveBayes);
    expect(folds.correct).toBe(635);
    expect(folds.logLossBits).toBeCloseTo(0.5414, 4);
    expect(folds.brier).toBeCloseTo(0.1268, 3);
    const left = soybean.leftOut(naiveBayes);
    expect([left.correct, Math.round(683 * left.hit2), Math.round(683 * left.hit3)]).toEqual([636, 653, 672]);
    expect(left.mrr).toBe(0.9566);
    expect(vote.onFolds(naiveBayes).correct).toBe(392);
    expect(contactLenses.onFolds(naiveBayes).correct).toBe(17);
  });
});

/* The best of nine learners of Weka 3.6.14 on these folds: see README.md in data/. */
describe("the pooled engine against the best of the plain learners on each figure", () => {
  it("on soybean beats all of them at once: 642 right, .3594 bits, Brier .1092, calibration error .029", {
    timeout: 180_000,
  }, () => {
    const report = soybean.onFolds(pooledEngine);
    expect(report.correct).toBeGreaterThan(642);
    expect(report.hit3).toBeGreaterThanOrEqual(0.998);
    expect(report.logLossBits).toBeLessThan(0.18);
    expect(report.brier).toBeLessThan(0.08);
    expect(report.ece).toBeLessThan(0.029);
  });

  it("on vote: at least 419 right; on contact lenses: at least 19", { timeout: 90_000 }, () => {
    expect(vote.onFolds(pooledEngine).correct).toBeGreaterThanOrEqual(419);
    expect(contactLenses.onFolds(pooledEngine).correct).toBeGreaterThanOrEqual(19);
  });
});
