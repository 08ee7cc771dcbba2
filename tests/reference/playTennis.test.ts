import { describe, expect, it } from "vitest";
import { CauseModel } from "@/lib/diagnosis/causeModel";
import { entropyBits } from "@/lib/diagnosis/entropy";
import { informationGainBits } from "@/lib/diagnosis/informationGain";

/**
 * Fourteen days and whether tennis was played.
 * Source: Quinlan 1986, Induction of decision trees, table 1 and section 4; the rows as in weather.nominal.arff, carried
 * by Weka 3.6.14. Entropy and gains were recomputed from the counts.
 */
const rows = `
sunny hot high FALSE no
sunny hot high TRUE no
overcast hot high FALSE yes
rainy mild high FALSE yes
rainy cool normal FALSE yes
rainy cool normal TRUE no
overcast cool normal TRUE yes
sunny mild high FALSE no
sunny cool normal FALSE yes
rainy mild normal FALSE yes
sunny mild normal TRUE yes
overcast mild high TRUE yes
overcast hot normal FALSE yes
rainy mild high TRUE no`
  .trim()
  .split("\n")
  .map((line) => line.split(" "));
const attributes = ["outlook", "temperature", "humidity", "windy"];
const published = { outlook: 0.24675, humidity: 0.151836, windy: 0.048127, temperature: 0.029223 };
const classes = ["yes", "no"];
const column = (name: string) => attributes.indexOf(name);
const count = (kind: string, at?: number, value?: string) =>
  rows.filter((row) => row[4] === kind && (at === undefined || row[at] === value)).length;

describe("play tennis", () => {
  it("has an entropy of .940286 bits", () => {
    expect(entropyBits(classes.map((kind) => count(kind)))).toBeCloseTo(0.940286, 6);
  });

  it.each(Object.entries(published))(
    "gains by %s what was published, by the entropy of the counts",
    (name, bits) => {
      const at = column(name);
      const values = [...new Set(rows.map((row) => row[at] ?? ""))];
      const after = values.reduce((sum, value) => {
        const counts = classes.map((kind) => count(kind, at, value));
        return sum + ((counts[0] ?? 0) + (counts[1] ?? 0)) * entropyBits(counts);
      }, 0);
      expect(entropyBits(classes.map((kind) => count(kind))) - after / rows.length).toBeCloseTo(bits, 6);
    },
  );

  /*
   * The model smooths: so the days are shown to it many times over, until its likelihoods are the days' own but for the
   * handbook's small say, and its gains must come to the published ones.
   */
  it("gains the same by the model that has learned the days, as its smoothing fades", () => {
    const kinds = attributes.map((key, at) => {
      const outcomes = [...new Set(rows.map((row) => row[at] ?? ""))];
      return { key, outcomes, background: outcomes.map(() => 1 / outcomes.length) };
    });
    const model = new CauseModel(
      classes.map((id) => ({ id, jobs: 1, tellTales: new Map() })),
      kinds,
    );
    for (let times = 0; times < 20_000; times++) {
      for (const row of rows) {
        const findings = new Map(attributes.map((key, at) => [key, row[at] ?? ""]));
        model.learn({ causes: [{ id: row[4] ?? "", share: 1 }], findings });
      }
    }
    const belief = { causes: Float64Array.of(9 / 14, 5 / 14), noneFits: 0 };
    for (const [name, bits] of Object.entries(published)) {
      expect(informationGainBits(model, belief, name)).toBeCloseTo(bits, 3);
    }
  });
});
