import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { naiveBayes } from "@/lib/evaluation/baselines/naiveBayes";
import { readTable } from "@/lib/evaluation/tables/readTable";

/*
 * Source: Quinlan 1986, table 1, as weather.nominal.arff of Weka 3.6.14; every count one more than counted, classes too.
 * P(no) recomputed from the counts: 6/16 4/8 2/8 5/7 4/7 against 10/16 3/12 4/12 4/11 4/11, and without temperature.
 */
const days = readFileSync(new URL("data/weather.nominal.arff", import.meta.url), "utf8");

it.each([
  ["sunny,cool,high,TRUE,yes", 0.735314],
  ["sunny,?,high,TRUE,yes", 0.787419],
])("naive Bayes on play tennis holds %s to be a day without tennis by %d", (day, published) => {
  const { columns, labels, classes } = readTable(`${days.trimEnd()}\n${day}\n`, "weather.arff");
  const data = { columns, labels, classCount: classes.length };
  const rows = Int32Array.from({ length: 14 }, (_, row) => row);
  expect(naiveBayes.learn(data, rows)(rows)(14)[classes.indexOf("no")]).toBeCloseTo(published, 6);
});
